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

QUrl DialogShare::folder()
{
    return QUrl::fromLocalFile(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
}

void DialogShare::save(const QString& suggestedName, const QByteArray& bytes)
{
    m_bytes = bytes;
    Q_EMIT askWhereTo(suggestedName);
}

void DialogShare::open(const QString& what)
{
    m_what = what;
    Q_EMIT askWhich();
}

void DialogShare::saveAs(const QUrl& file)
{
    const QString problem = writeShared(file, m_bytes);
    m_bytes.clear();
    if (problem.isEmpty()) {
        Q_EMIT saved(file.fileName());
    } else {
        Q_EMIT failed(problem);
    }
}

void DialogShare::openFrom(const QUrl& file)
{
    QString problem;
    const QByteArray bytes = readShared(file, problem);
    if (problem.isEmpty()) {
        Q_EMIT opened(m_what, file.fileName(), bytes);
    } else {
        Q_EMIT failed(problem);
    }
}

} // namespace peelpack::share
