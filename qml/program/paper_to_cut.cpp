#include "qml/program/paper_to_cut.h"

#include "platform/print/papers.h"
#include "platform/print/pdf.h"
#include "platform/session/setup.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::program {
namespace {

constexpr int mostStubNumber = 99'999'999;

} // namespace

void PaperToCut::setA4(bool a4)
{
    if (m_a4 != a4) {
        m_a4 = a4;
        Q_EMIT changed();
    }
}

int PaperToCut::invitations()
{
    return static_cast<int>(session::openInvitations(m_desk.session()).size());
}

QByteArray PaperToCut::fail(const QString& sentence)
{
    m_error = sentence;
    Q_EMIT changed();
    return {};
}

QByteArray PaperToCut::pdf(const print::Document& document)
{
    const print::PageFrame frame{QStringLiteral("Peelpack"), QString::fromStdString(m_desk.today().iso()),
                                 m_a4 ? print::PageSize::A4 : print::PageSize::Letter};
    const base::Result<print::Pdf> made = print::makePdf(document, frame);
    if (!made) {
        return fail(words::why(made.error()));
    }
    fail({});
    return made.value().bytes;
}

QByteArray PaperToCut::invitationsPdf()
{
    std::vector<print::CarriedCode> codes;
    for (const session::OpenInvitation& open : session::openInvitations(m_desk.session())) {
        codes.push_back({words::toArray(open.code), words::fromUtf8(open.name), {}});
    }
    return codes.empty() ? fail(tr("No invitation is open.")) : pdf(print::invitations(codes));
}

QByteArray PaperToCut::invitationPdf(const QString& name, const QByteArray& code)
{
    return pdf(print::invitations({{code, name, {}}}));
}

QByteArray PaperToCut::cardPdf(const QString& holder, const QByteArray& code, const QString& typed)
{
    return pdf(print::signingCards({{code, holder, typed}}));
}

QByteArray PaperToCut::stubsPdf(const QString& count, const QString& first)
{
    bool countReads = false;
    bool firstReads = false;
    const int many = count.trimmed().toInt(&countReads);
    const int from = first.trimmed().toInt(&firstReads);
    if (!countReads || !firstReads || many < 1 || many > mostStubs || from < 1 || from > mostStubNumber) {
        return fail(tr("From 1 to %1 stubs, numbered from 1 or later.").arg(mostStubs));
    }
    return pdf(print::pocketStubs(static_cast<std::uint64_t>(from), static_cast<std::size_t>(many)));
}

} // namespace peelpack::program
