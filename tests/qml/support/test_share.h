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
        Q_EMIT saved(suggestedName);
    }
    void open(const QString& what) override { Q_EMIT opened(what, readyName, ready); }

    bool refuses = false;
    QString lastName;
    QByteArray last;
    QString readyName;
    QByteArray ready;
};

} // namespace peelpack::test
