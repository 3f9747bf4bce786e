#pragma once

#include "qml/instructor/pending_acts.h"

#include <QStringList>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <thread>

namespace peelpack::print {
struct Document;
struct PageFrame;
} // namespace peelpack::print

namespace peelpack::evidence_pages {

/// Papers as PDF, and the rows of the case sheets as a file: made on another thread from values, so that the window
/// stays alive, with progress, and given up when it is asked.
class Papers : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(QString student READ student NOTIFY changed)
    Q_PROPERTY(QStringList classes READ classes NOTIFY changed)
    Q_PROPERTY(int ofClass READ ofClass WRITE setOfClass NOTIFY changed)
    Q_PROPERTY(QStringList sizes READ sizes CONSTANT)
    Q_PROPERTY(int size READ size WRITE setSize NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    enum Kind { Log, Board, Report, Rows };
    Q_ENUM(Kind)

    Papers(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent = nullptr);
    ~Papers() override;

    /// The one student that they are about; empty: those of a class, or all.
    [[nodiscard]] const QString& student() const { return m_studentName; }
    /// The first one is all.
    [[nodiscard]] QStringList classes() const;
    [[nodiscard]] int ofClass() const { return m_ofClass; }
    void setOfClass(int ofClass);
    [[nodiscard]] static QStringList sizes();
    /// 0 Letter, 1 A4.
    [[nodiscard]] int size() const { return m_size; }
    void setSize(int size);
    [[nodiscard]] bool busy() const { return m_work != nullptr; }
    [[nodiscard]] const QString& progress() const { return m_progress; }
    /// What lies ready to be saved, in words; empty: nothing.
    [[nodiscard]] const QString& done() const { return m_done; }
    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// 32 digits; empty: everybody.
    Q_INVOKABLE void choose(const QString& student);
    Q_INVOKABLE void make(int kind);
    /// Of one sheet, by its key.
    Q_INVOKABLE void makeSheet(const QString& key);
    /// Of a completion record that is a file; it is verified first.
    Q_INVOKABLE void makeRecord(const QByteArray& file);
    /// Nothing is kept of what was begun.
    Q_INVOKABLE void cancel();
    Q_INVOKABLE [[nodiscard]] QByteArray bytes() const { return m_bytes; }

Q_SIGNALS:
    void changed();
    /// It can be saved.
    void ready(const QString& name);

private:
    struct Work;
    struct Made {
        QByteArray bytes;
        QString words;
        QString error;
    };
    using Step = std::function<Made(Work& work)>;
    static Made setPaper(const print::Document& document, const print::PageFrame& frame, Work& work);

    [[nodiscard]] std::vector<keys::Id> chosen() const;
    void start(const QString& name, Step step);
    void finish(const std::shared_ptr<Work>& work);
    void tellProgress(const Work& work);
    void fail(const QString& why);

    instructor::StaffDesk& m_desk;
    instructor::PendingActs& m_pending;
    QString m_studentId;
    QString m_studentName;
    int m_ofClass = 0;
    int m_size = 0;
    std::shared_ptr<Work> m_work; ///< that goes on; null: nothing does
    std::thread m_thread;
    QString m_progress;
    QString m_done;
    QString m_name;
    QString m_nextName; ///< of what is being made
    QByteArray m_bytes;
    QString m_error;
};

} // namespace peelpack::evidence_pages
