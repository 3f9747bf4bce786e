#pragma once

#include "platform/calendar/days_file.h"
#include "qml/program/program_desk.h"

#include <QStringList>

namespace peelpack::program {

/// The clinical days of a class: taken in from a calendar or table, read back before they are signed, and given out.
class ClinicalDayLists : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool mayChange READ mayChange CONSTANT)
    Q_PROPERTY(QStringList classes READ classes NOTIFY changed)
    Q_PROPERTY(int ofClass READ ofClass WRITE setOfClass NOTIFY changed)
    Q_PROPERTY(QStringList coming READ coming NOTIFY changed)
    Q_PROPERTY(QStringList past READ past NOTIFY changed)
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(QStringList inFile READ inFile NOTIFY changed)
    Q_PROPERTY(QString site READ site WRITE setSite NOTIFY changed)
    Q_PROPERTY(QString zone READ zone WRITE setZone NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)

public:
    explicit ClinicalDayLists(ProgramDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] bool mayChange();
    /// The first is every class.
    [[nodiscard]] const QStringList& classes() const { return m_names; }
    [[nodiscard]] int ofClass() const { return m_ofClass; }
    void setOfClass(int index);
    /// From today on, the next first; and before, the latest first.
    [[nodiscard]] const QStringList& coming() const { return m_coming; }
    [[nodiscard]] const QStringList& past() const { return m_past; }
    /// Its name; empty: none was chosen.
    [[nodiscard]] const QString& file() const { return m_file; }
    /// The days that are in it; empty while it cannot be read: see `error`.
    [[nodiscard]] const QStringList& inFile() const { return m_inFile; }
    /// Of days that name no place.
    [[nodiscard]] const QString& site() const { return m_site; }
    void setSite(const QString& site);
    /// Of the site, for a calendar in UTC: "America/Chicago".
    [[nodiscard]] const QString& zone() const { return m_zone; }
    void setZone(const QString& zone);
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] const QString& done() const { return m_done; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    Q_INVOKABLE void open(const QString& name, const QByteArray& bytes);
    /// Signs what was read, in place of the days that are there.
    Q_INVOKABLE void takeIn();
    Q_INVOKABLE void takeAway();
    /// Leaves the file.
    Q_INVOKABLE void forget();
    /// The days of the class as a calendar (RFC 5545); empty: see `error`.
    Q_INVOKABLE QByteArray calendar();

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] std::string className() const { return m_classes[static_cast<std::size_t>(m_ofClass)]; }
    void readFile();
    void write(std::vector<journal::ClinicalDay> days, const QString& done);

    ProgramDesk& m_desk;
    std::vector<std::string> m_classes{std::string()};
    QStringList m_names;
    int m_ofClass = 0;
    QStringList m_coming;
    QStringList m_past;
    QString m_file;
    std::string m_text;
    std::vector<journal::ClinicalDay> m_days; ///< in the file
    QStringList m_inFile;
    QString m_site;
    QString m_zone;
    QString m_error;
    QString m_done;
};

} // namespace peelpack::program
