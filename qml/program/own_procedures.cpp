#include "qml/program/own_procedures.h"

#include "core/catalogue/overlay.h"
#include "platform/session/program_catalogue.h"
#include "platform/session/rule_writing.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::program {
namespace {

QString categoriesOf(const catalogue::Procedure& procedure)
{
    QStringList labels;
    for (const catalogue::Category category : procedure.categories) {
        labels.append(words::of(category));
    }
    return labels.join(QStringLiteral(", "));
}

} // namespace

OwnProcedures::OwnProcedures(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, &OwnProcedures::read);
}

bool OwnProcedures::mayChange()
{
    return session::mayWriteRule(m_desk.session(), journal::Kind::CatalogueOverlay);
}

std::vector<NamedRow> OwnProcedures::rowsOf(const catalogue::Catalogue& laid)
{
    std::vector<NamedRow> rows;
    for (const catalogue::OverlayRow& row : catalogue::overlayRows(m_desk.staff().shelf().shipped(), laid)) {
        QStringList detail{categoriesOf(*row.procedure)};
        if (row.before == nullptr) {
            detail.append(tr("added"));
        } else {
            detail.append(tr("changed"));
            if (row.before->name != row.procedure->name) {
                detail.append(tr("was called %1").arg(words::fromUtf8(row.before->name)));
            }
            if (!(row.before->categories == row.procedure->categories)) {
                detail.append(tr("was filed under %1").arg(categoriesOf(*row.before)));
            }
        }
        rows.push_back(
            {static_cast<int>(rows.size()), words::fromUtf8(row.procedure->name), detail.join(QStringLiteral(" · "))});
    }
    return rows;
}

bool OwnProcedures::misfits()
{
    return m_desk.staff().shelf().misfits();
}

void OwnProcedures::read()
{
    m_inForce.put(rowsOf(m_desk.staff().catalogue()));
    Q_EMIT changed();
}

void OwnProcedures::open(const QString& name, const QByteArray& bytes)
{
    forget();
    m_file = name;
    m_text = bytes.toStdString();
    const auto laid = catalogue::checkedOverlay(m_desk.staff().shelf().shipped(), m_text);
    m_error = words::problem(laid);
    m_inFile.put(laid ? rowsOf(laid.value()) : std::vector<NamedRow>());
    if (laid && m_inFile.rowCount() == 0) {
        m_error = tr("This table says nothing that the catalogue does not say already. Choose another one.");
    }
    Q_EMIT changed();
}

void OwnProcedures::write(const std::string& table, const QString& done)
{
    m_error = m_desk.write([&] {
        return words::problem(session::setCatalogueOverlay(m_desk.session(), m_desk.staff().shelf().shipped(), table));
    });
    if (m_error.isEmpty()) {
        forget();
        m_done = done;
    }
    Q_EMIT changed();
}

void OwnProcedures::takeIn()
{
    if (m_inFile.rowCount() > 0) {
        write(m_text, tr("Signed. The procedures reach the students with your next parcels."));
    }
}

void OwnProcedures::takeAway()
{
    write({}, tr("Signed: the catalogue is in force as it is shipped."));
}

void OwnProcedures::forget()
{
    m_file.clear();
    m_text.clear();
    m_inFile.put({});
    m_error.clear();
    m_done.clear();
    Q_EMIT changed();
}

QByteArray OwnProcedures::table()
{
    return QByteArray::fromStdString(session::overlayInForce(m_desk.session()));
}

QByteArray OwnProcedures::emptyTable()
{
    return QByteArrayLiteral("id\tname\tsynonyms\tshorthand\tcategories\tflags\tsources\n");
}

} // namespace peelpack::program
