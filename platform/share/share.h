#pragma once

#include <QByteArray>
#include <QObject>
#include <QString>
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

    /// What the screen has to ask with a file dialog: "where", "which"; empty: nothing.
    [[nodiscard]] const QString& asking() const { return m_asking; }
    [[nodiscard]] const QString& suggestedName() const { return m_suggestedName; }
    /// Where the dialog begins: the person's documents.
    [[nodiscard]] static QUrl folder();
    /// The answer; an empty one: the person thought otherwise.
    Q_INVOKABLE virtual void answer(const QUrl& file) { Q_UNUSED(file) }

Q_SIGNALS:
    void askingChanged();
    void saved(const QString& where);
    void opened(const QString& what, const QString& name, const QByteArray& bytes);
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

private:
    QByteArray m_bytes;
    QString m_what;
};

} // namespace peelpack::share
