#pragma once

#include <QByteArray>
#include <QByteArrayList>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QUrl>

namespace peelpack::share {

/// How a file leaves the app and comes into it: the platform's share sheet or file picker. Bytes in, bytes out; what
/// they mean is not its business.
class Share : public QObject {
    Q_OBJECT
    Q_PROPERTY(QString asking READ asking NOTIFY askingChanged)
    Q_PROPERTY(QString suggestedName READ suggestedName NOTIFY askingChanged)
    Q_PROPERTY(QUrl folder READ folder CONSTANT)

public:
    using QObject::QObject;

    /// No file that is opened is larger: 256 MiB.
    static constexpr qint64 mostBytes = qint64{256} * 1024 * 1024;

    /// Asks where to, and writes it; ends with saved(), failed(), or nothing when the person thought otherwise.
    Q_INVOKABLE virtual void save(const QString& suggestedName, const QByteArray& bytes) = 0;
    /// Asks which, and reads it; ends with opened(), failed() or nothing. `what` comes back with it.
    Q_INVOKABLE virtual void open(const QString& what) = 0;

    /// Asks for several files, or for a folder of them, and reads them; ends with openedSome(), failed() or nothing.
    Q_INVOKABLE virtual void openSome(const QString& what, bool folder);
    /// Asks for a folder, and writes a file of each name into it; ends as save() does. Nothing there is replaced.
    Q_INVOKABLE virtual void saveSome(const QStringList& names, const QByteArrayList& files);
    /// Files that were dropped on the window; ends as openSome().
    Q_INVOKABLE virtual void take(const QString& what, const QList<QUrl>& files);

    /// What the screen has to ask with a file dialog: "where", "which", "some", "folder"; empty: nothing.
    [[nodiscard]] const QString& asking() const { return m_asking; }
    [[nodiscard]] const QString& suggestedName() const { return m_suggestedName; }
    /// Where the dialog begins: the person's documents.
    [[nodiscard]] static QUrl folder();
    /// The answer; an empty one: the person thought otherwise.
    Q_INVOKABLE virtual void answer(const QUrl& file) { Q_UNUSED(file) }
    /// The same to "some"; none: the person thought otherwise.
    Q_INVOKABLE virtual void answerSome(const QList<QUrl>& files) { Q_UNUSED(files) }

Q_SIGNALS:
    void askingChanged();
    void saved(const QString& where);
    void opened(const QString& what, const QString& name, const QByteArray& bytes);
    void openedSome(const QString& what, const QStringList& names, const QByteArrayList& files);
    void failed(const QString& why);

protected:
    void ask(const QString& question, const QString& suggestedName = {});

private:
    QString m_asking;
    QString m_suggestedName;
};

/// Reads a whole file of at most Share::mostBytes. Empty name of `error`: read.
QByteArray readShared(const QUrl& file, QString& error);
/// Writes a whole file, complete or not at all. A sentence when it could not.
QString writeShared(const QUrl& file, const QByteArray& bytes);

/// A share whose questions the screen asks with its own file dialog.
class DialogShare final : public Share {
    Q_OBJECT

public:
    using Share::Share;

    void save(const QString& suggestedName, const QByteArray& bytes) override;
    void open(const QString& what) override;
    void answer(const QUrl& file) override;
    void openSome(const QString& what, bool folder) override;
    void saveSome(const QStringList& names, const QByteArrayList& files) override;
    void answerSome(const QList<QUrl>& files) override;

private:
    void answerFolder(const QString& folder);

    QStringList m_names; ///< of files that wait for a folder; empty: a folder is to be read
    QByteArrayList m_files;
    QByteArray m_bytes;
    QString m_what;
};

} // namespace peelpack::share
