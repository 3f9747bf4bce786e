#include "platform/files/resources.h"

#include <QFile>

namespace peelpack::files {

base::Result<std::string> shippedText(const std::string& path)
{
    QFile file(QStringLiteral(":/peelpack/") + QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) {
        return base::Error{base::ErrorCode::CannotRead,
                           "The program's own file " + path + " is missing; install the program again."};
    }
    return file.readAll().toStdString();
}

base::Result<catalogue::Catalogue> shippedCatalogue()
{
    const base::Result<std::string> text = shippedText("catalogue.tsv");
    if (!text) {
        return text.error();
    }
    return catalogue::Catalogue::fromTsv(text.value());
}

const std::vector<std::string>& shippedSetIds()
{
    static const std::vector<std::string> ids{"cap15", "spread10", "cap15-four", "spread10-140"};
    return ids;
}

} // namespace peelpack::files
