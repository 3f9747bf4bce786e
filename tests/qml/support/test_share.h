#pragma once

#include "platform/share/share.h"

#include <QMap>

namespace peelpack::test {

/// The person at the file picker: what is saved stays here by name, and what is asked for was laid ready before.
class TestShare final : public share::Share {
    Q_OBJECT

public:
    using Share::Share;

    void save(const QString& suggestedName, const QByteArray& bytes) override
    {
        if (refuses) {
            Q_EMIT failed(QStringLiteral("Cannot write there: check the space that is left, or choose another place."));
            return;
        }
        lastName = suggestedName;
        last = bytes;
        kept.insert(suggestedName, bytes);
        Q_EMIT saved(suggestedName);
    }
    void open(const QString& what) override { Q_EMIT opened(what, readyName, ready); }

    void openSome(const QString& what, bool folder) override
    {
        Q_UNUSED(folder)
        Q_EMIT openedSome(what, readyNames, readyFiles);
    }
    void saveSome(const QStringList& names, const QByteArrayList& files) override
    {
        for (qsizetype i = 0; i < names.size(); ++i) {
            kept.insert(names[i], files[i]);
        }
        Q_EMIT saved(QStringLiteral("a folder"));
    }

    bool refuses = false;
    QMap<QString, QByteArray> kept; ///< every file that was saved
    QStringList readyNames;
    QByteArrayList readyFiles;
    QString lastName;
    QByteArray last;
    QString readyName;
    QByteArray ready;
};

} // namespace peelpack::test
