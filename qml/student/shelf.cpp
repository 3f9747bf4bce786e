#include "qml/student/shelf.h"

namespace peelpack::student {

base::Result<bool> Shelf::prepare()
{
    search();
    return *m_shipped ? base::Result<bool>(true) : m_shipped->error();
}

bool Shelf::layOver(std::string table)
{
    if (table == m_table) {
        return false;
    }
    m_table = std::move(table);
    m_search.reset();
    m_laid.reset();
    return true;
}

bool Shelf::misfits()
{
    return !m_table.empty() && shared() && m_misfits;
}

const catalogue::Catalogue& Shelf::shipped()
{
    if (!m_shipped) {
        m_shipped.emplace(m_read());
    }
    return *m_shipped ? m_shipped->value() : m_empty;
}

const std::shared_ptr<const catalogue::Catalogue>& Shelf::shared()
{
    if (!m_laid) {
        m_laid = std::shared_ptr<const catalogue::Catalogue>(std::shared_ptr<void>(), &shipped()); // the shelf's own
        m_misfits = false;
        if (!m_table.empty()) {
            base::Result<catalogue::Catalogue> laid = shipped().withOverlay(m_table);
            m_misfits = !laid;
            if (laid) {
                m_laid = std::make_shared<const catalogue::Catalogue>(std::move(laid).value());
            }
        }
    }
    return m_laid;
}

catalogue::Search& Shelf::search()
{
    if (!m_search) {
        m_search.emplace(catalogue());
    }
    return *m_search;
}

} // namespace peelpack::student
