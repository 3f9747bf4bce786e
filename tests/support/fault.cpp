#include "tests/support/fault.h"

namespace peelpack::test {

const char* nameOf(Fault fault)
{
    switch (fault) {
    case Fault::None:
        return "no fault";
    case Fault::StopBefore:
        return "stop before";
    case Fault::StopAfter:
        return "stop after";
    case Fault::ShortWrite:
        return "short write";
    case Fault::FailOnce:
        return "fail once";
    case Fault::DiskFull:
        return "disk full";
    }
    return "";
}

const char* nameOf(Operation::Sort sort)
{
    switch (sort) {
    case Operation::Sort::Create:
        return "create";
    case Operation::Sort::Write:
        return "write";
    case Operation::Sort::Sync:
        return "sync";
    case Operation::Sort::Truncate:
        return "truncate";
    case Operation::Sort::Delete:
        return "delete";
    }
    return "";
}

} // namespace peelpack::test
