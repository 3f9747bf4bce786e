#include "platform/cli/bytes_file.h"

#include "platform/files/text_file.h"

#include <QFile>

namespace peelpack::cli {

base::Result<keys::Bytes> readBytes(const std::string& file, std::size_t most)
{
    const base::Result<std::string> text = files::readWholeFile(file, most);
    if (!text) {
        return text.error();
    }
    return keys::Bytes(text.value().begin(), text.value().end());
}

base::Result<bool> writeNewFile(const std::string& file, keys::ByteView bytes)
{
    if (QFile::exists(QString::fromStdString(file))) {
        return base::Error{base::ErrorCode::CannotWrite, "There is a file " + file + " already; name another."};
    }
    const base::Result<std::size_t> written =
        files::writeWholeFile(file, {reinterpret_cast<const char*>(bytes.data()), bytes.size()});
    if (!written) {
        return written.error();
    }
    return true;
}

} // namespace peelpack::cli
