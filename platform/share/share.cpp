#include "platform/share/share.h"

#include <QDir>
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

void Share::openSome(const QString& what, bool folder)
{
    Q_UNUSED(folder)
    open(what); // one at a time where the platform has no other way
}

void Share::saveSome(const QStringList& names, const QByteArrayList& files)
{
    for (qsizetype i = 0; i < files.size(); ++i) {
        save(names.value(i), files[i]);
    }
}

void Share::take(const QString& what, const QList<QUrl>& files)
{
    QStringList names;
    QByteArrayList read;
    for (const QUrl& file : files) {
        const QFileInfo info(file.isLocalFile() ? file.toLocalFile() : file.toString());
        QStringList paths{info.filePath()};
        if (info.isDir()) {
            paths.clear();
            for (const QString& name : QDir(info.filePath()).entryList(QDir::Files, QDir::Name)) {
                paths.append(info.filePath() + QLatin1Char('/') + name);
            }
        }
        for (const QString& path : paths) {
            QString problem;
            QByteArray bytes = readShared(QUrl::fromLocalFile(path), problem);
            if (!problem.isEmpty()) {
                Q_EMIT failed(QFileInfo(path).fileName() + QStringLiteral(": ") + problem);
                return;
            }
            names.append(QFileInfo(path).fileName());
            read.append(std::move(bytes));
        }
    }
    if (!read.isEmpty()) {
        Q_EMIT openedSome(what, names, read);
    }
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
    if (asking() == QLatin1String("folder")) {
        answerFolder(file.toLocalFile());
        return;
    }
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

void DialogShare::openSome(const QString& what, bool folder)
{
    m_what = what;
    m_names.clear();
    m_files.clear();
    ask(folder ? QStringLiteral("folder") : QStringLiteral("some"));
}

void DialogShare::saveSome(const QStringList& names, const QByteArrayList& files)
{
    m_names = names;
    m_files = files;
    ask(QStringLiteral("folder"));
}

void DialogShare::answerSome(const QList<QUrl>& files)
{
    ask({});
    take(m_what, files);
}

void DialogShare::answerFolder(const QString& folder)
{
    ask({});
    const QStringList names = std::move(m_names);
    const QByteArrayList files = std::move(m_files);
    m_names.clear();
    m_files.clear();
    if (folder.isEmpty()) {
        return;
    }
    if (names.isEmpty()) {
        take(m_what, {QUrl::fromLocalFile(folder)});
        return;
    }
    for (const QString& name : names) {
        if (QFileInfo::exists(folder + QLatin1Char('/') + name)) {
            Q_EMIT failed(tr("%1 is there already. Choose another folder, or move it away.").arg(name));
            return;
        }
    }
    for (qsizetype i = 0; i < files.size(); ++i) {
        const QString problem = writeShared(QUrl::fromLocalFile(folder + QLatin1Char('/') + names.value(i)), files[i]);
        if (!problem.isEmpty()) {
            Q_EMIT failed(problem);
            return;
        }
    }
    Q_EMIT saved(QFileInfo(folder).fileName());
}

} // namespace peelpack::share
