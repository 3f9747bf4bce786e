#pragma once

#include "qml/preceptor/marked_sheet.h"
#include "qml/words/words.h"

#include <QStringList>

#include <vector>

namespace peelpack::preceptor {

/// The sheets of one sitting in a preceptor's hands: confirmed or corrected, marked, read back. How they are signed is
/// the business of whose phone it is. Marks live here only until they are signed.
class Sitting : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a preceptor marks sheets")
    Q_PROPERTY(peelpack::preceptor::Sitting::Step step READ step NOTIFY changed)
    Q_PROPERTY(QString student READ student CONSTANT)
    Q_PROPERTY(int place READ place NOTIFY changed)
    Q_PROPERTY(int total READ total NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString head READ head NOTIFY changed)
    Q_PROPERTY(QStringList procedures READ procedures NOTIFY changed)
    Q_PROPERTY(bool canceled READ canceled WRITE setCanceled NOTIFY changed)
    Q_PROPERTY(peelpack::preceptor::MarkingRows* marks READ marks CONSTANT)
    Q_PROPERTY(int open READ open NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(QString feedback READ feedback WRITE setFeedback NOTIFY changed)
    Q_PROPERTY(QString feedbackWarning READ feedbackWarning NOTIFY changed)
    Q_PROPERTY(QStringList readBack READ readBack NOTIFY changed)
    Q_PROPERTY(QString beforehand READ beforehand CONSTANT)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    enum Step {
        Performed,   ///< the procedure as performed, confirmed or corrected
        Marking,     ///< the ten skills
        ReadingBack, ///< what is signed, in words
        Signing,     ///< with what
        OwnPhone,    ///< the preceptor signs on their own phone
        Drawing,     ///< the weakest way
        Declining,
        Signed,
        Declined,
    };
    Q_ENUM(Step)

    [[nodiscard]] Step step() const { return m_step; }
    [[nodiscard]] virtual QString student() const = 0;
    [[nodiscard]] int place() const { return static_cast<int>(m_place); }
    [[nodiscard]] int total() const { return static_cast<int>(m_sheets.size()); }
    [[nodiscard]] QString title() const { return words::listed(procedures()); }
    [[nodiscard]] QString head() const { return now().head(today()); }
    [[nodiscard]] QStringList procedures() const { return now().procedures(); }
    [[nodiscard]] bool canceled() const { return now().canceled(); }
    void setCanceled(bool canceled);
    [[nodiscard]] MarkingRows* marks() { return &m_rows; }
    /// Skills without a mark.
    [[nodiscard]] int open() const { return now().open(); }
    /// What keeps this sheet from being read back; empty: nothing.
    [[nodiscard]] QString missing() const { return now().missing(); }
    [[nodiscard]] QString feedback() const { return now().feedback(); }
    void setFeedback(const QString& text);
    [[nodiscard]] QString feedbackWarning() const { return now().feedbackWarning(); }
    /// What will be signed, all sheets, a fact a line.
    [[nodiscard]] QStringList readBack() const;
    /// What a preceptor should know before the first mark; empty: nothing.
    [[nodiscard]] virtual QString beforehand() const = 0;
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void correct(int procedure, const QString& text);
    Q_INVOKABLE void mark(int skill, int mark);
    Q_INVOKABLE void reason(int skill, const QString& text);
    Q_INVOKABLE void markFirstScrubYes();
    /// On to the next step or sheet, and back.
    Q_INVOKABLE void next();
    Q_INVOKABLE void back();

Q_SIGNALS:
    void changed();

protected:
    explicit Sitting(QObject* parent) : QObject(parent) {}

    [[nodiscard]] virtual base::Date today() const = 0;
    /// Begins with these sheets, at least one.
    void begin(std::vector<MarkedSheet> sheets);
    [[nodiscard]] const std::vector<MarkedSheet>& sheets() const { return m_sheets; }
    [[nodiscard]] MarkedSheet& now() { return m_sheets[m_place]; }
    [[nodiscard]] const MarkedSheet& now() const { return m_sheets[m_place]; }
    [[nodiscard]] bool isLast() const { return m_place + 1 >= m_sheets.size(); }
    void goToFirstSheet() { m_place = 0; }
    /// The sheet in hand leaves the sitting, which goes on with the next; the only one stays.
    void dropSheet();
    void setStep(Step step) { m_step = step; }
    void setError(QString error) { m_error = std::move(error); }
    /// Says at once what is wrong.
    void fail(QString error);
    void showMarks();

private:
    std::vector<MarkedSheet> m_sheets;
    std::size_t m_place = 0;
    Step m_step = Performed;
    MarkingRows m_rows;
    QString m_error;
};

} // namespace peelpack::preceptor
