#include "platform/share/share.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStandardPaths>

namespace peelpack::share {

QByteArray readShared(const QUrl& url, QString& error)
{
    QFile file(url.isLocalFile() ? url.toLocalFile() : url.toString());
    if (!file.open(QIODevice::ReadOnly)) {
        error = Share::tr("Cannot read this file.");
        return {};
    }
    if (file.size() > Share::mostBytes) {
        error = Share::tr("This file is too large to be one of Peelpack's.");
        return {};
    }
    return file.readAll();
}

QString writeShared(const QUrl& url, const QByteArray& bytes)
{
    QSaveFile file(url.isLocalFile() ? url.toLocalFile() : url.toString());
    file.setDirectWriteFallback(true);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit()) {
        return Share::tr("Cannot write there: check the space that is left, or choose another place.");
    }
    return {};
}

QUrl Share::folder()
{
    return QUrl::fromLocalFile(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
}

void Share::ask(const QString& question, const QString& suggestedName)
{
    m_asking = question;
    m_suggestedName = suggestedName;
    Q_EMIT askingChanged();
}

void DialogShare::save(const QString& suggestedName, const QByteArray& bytes)
{
    m_bytes = bytes;
    ask(QStringLiteral("where"), suggestedName);
}

void DialogShare::open(const QString& what)
{
    m_what = what;
    ask(QStringLiteral("which"));
}

void DialogShare::answer(const QUrl& file)
{
    const bool saving = asking() == QLatin1String("where");
    ask({});
    const QByteArray bytes = std::move(m_bytes);
    m_bytes.clear();
    if (file.isEmpty()) {
        return;
    }
    QString problem;
    if (saving) {
        problem = writeShared(file, bytes);
        if (problem.isEmpty()) {
            Q_EMIT saved(file.fileName());
        }
    } else {
        const QByteArray read = readShared(file, problem);
        if (problem.isEmpty()) {
            Q_EMIT opened(m_what, file.fileName(), read);
        }
    }
    if (!problem.isEmpty()) {
        Q_EMIT failed(problem);
    }
}

} // namespace peelpack::share
