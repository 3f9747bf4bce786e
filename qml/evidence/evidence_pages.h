#pragma once

#include "qml/evidence/aside.h"
#include "qml/evidence/completion.h"
#include "qml/evidence/confirming.h"
#include "qml/evidence/papers.h"

namespace peelpack::evidence_pages {

/// The pages of evidence over a staff's desk; gone with it when it is locked.
class EvidencePages : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(peelpack::evidence_pages::Completion* completion READ completion CONSTANT)
    Q_PROPERTY(peelpack::evidence_pages::Papers* papers READ papers CONSTANT)
    Q_PROPERTY(peelpack::evidence_pages::Confirming* confirming READ confirming CONSTANT)
    Q_PROPERTY(peelpack::evidence_pages::Aside* aside READ aside CONSTANT)

public:
    EvidencePages(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent = nullptr)
        : QObject(parent), m_completion(desk, pending), m_papers(desk, pending), m_confirming(desk, pending),
          m_aside(desk, pending)
    {
    }

    [[nodiscard]] Completion* completion() { return &m_completion; }
    [[nodiscard]] Papers* papers() { return &m_papers; }
    [[nodiscard]] Confirming* confirming() { return &m_confirming; }
    [[nodiscard]] Aside* aside() { return &m_aside; }

private:
    Completion m_completion;
    Papers m_papers;
    Confirming m_confirming;
    Aside m_aside;
};

} // namespace peelpack::evidence_pages
