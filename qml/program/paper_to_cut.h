#pragma once

#include "qml/program/program_desk.h"

namespace peelpack::print {
struct Document;
}

namespace peelpack::program {

/// What a program prints and cuts apart, as PDF to be shared: invitations, signing cards, pocket stubs. In English, as
/// all papers.
class PaperToCut : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool a4 READ a4 WRITE setA4 NOTIFY changed)
    Q_PROPERTY(int invitations READ invitations NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit PaperToCut(ProgramDesk& desk, QObject* parent = nullptr) : QObject(parent), m_desk(desk) {}

    static constexpr int mostStubs = 100;

    /// A4 instead of letter.
    [[nodiscard]] bool a4() const { return m_a4; }
    void setA4(bool a4);
    /// That were given out and not answered.
    [[nodiscard]] int invitations();
    [[nodiscard]] const QString& error() const { return m_error; }

    /// All open invitations; empty: see `error`.
    Q_INVOKABLE QByteArray invitationsPdf();
    /// The one invitation whose code this is.
    Q_INVOKABLE QByteArray invitationPdf(const QString& name, const QByteArray& code);
    Q_INVOKABLE QByteArray cardPdf(const QString& holder, const QByteArray& code, const QString& typed);
    /// `count` stubs, numbered from `first`; both as they were typed.
    Q_INVOKABLE QByteArray stubsPdf(const QString& count, const QString& first);

Q_SIGNALS:
    void changed();

private:
    QByteArray pdf(const print::Document& document);
    QByteArray fail(const QString& sentence);

    ProgramDesk& m_desk;
    bool m_a4 = false;
    QString m_error;
};

} // namespace peelpack::program
