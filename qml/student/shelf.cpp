#include "qml/student/shelf.h"

namespace peelpack::student {

base::Result<bool> Shelf::prepare()
{
    search();
    return *m_made ? base::Result<bool>(true) : m_made->error();
}

const catalogue::Catalogue& Shelf::catalogue()
{
    if (!m_made) {
        m_made.emplace(m_read());
    }
    return *m_made ? m_made->value() : m_empty;
}

catalogue::Search& Shelf::search()
{
    if (!m_search) {
        m_search.emplace(catalogue());
    }
    return *m_search;
}

} // namespace peelpack::student
