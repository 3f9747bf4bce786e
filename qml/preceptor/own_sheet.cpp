#include "qml/preceptor/own_sheet.h"

namespace peelpack::preceptor {

OwnSheet::OwnSheet(journal::SigningRequest request, base::Date today, const std::optional<journal::Time>& before,
                   QObject* parent)
    : Sitting(parent), m_request(std::move(request)), m_today(today), m_before(before)
{
    begin({MarkedSheet(m_request)});
}

QString OwnSheet::beforehand() const
{
    return m_before
               ? tr("You signed this sheet on %1. Signing it again adds to it: mark only what you did not mark then.")
                     .arg(words::moment({m_before->seconds, m_before->zone}, m_today))
               : QString();
}

} // namespace peelpack::preceptor
