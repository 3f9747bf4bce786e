#pragma once

#include "platform/print/counted_class.h"
#include "platform/print/document.h"

namespace peelpack::print {

/// "Complete under cap15, decided on 2027-05-20 by Adela Winther."; one by exception says so first, with its reason.
QString decisionText(const session::CompletionDecision& decision);
/// The decisions in force about these students, with a heading; nothing where there is none.
void addDecisions(Document& document, const CountedClass& counted);

} // namespace peelpack::print
