#include "platform/vault/vault_error.h"

namespace peelpack::vault {

base::Error asError(const VaultError& error)
{
    switch (error.fault) {
    case Fault::CannotRead:
    case Fault::NotThere:
    case Fault::InUse:
        return {base::ErrorCode::CannotRead, error.sentence};
    case Fault::CannotWrite:
    case Fault::Exists:
        return {base::ErrorCode::CannotWrite, error.sentence};
    case Fault::WrongSecret:
    case Fault::MustWait:
    case Fault::Disabled:
    case Fault::MarkMissing:
    case Fault::WeakSecret:
        return {base::ErrorCode::BadValue, error.sentence};
    case Fault::Damaged:
    case Fault::NotAVault:
    case Fault::Newer:
        break;
    }
    return {base::ErrorCode::BadInput, error.sentence};
}

} // namespace peelpack::vault
