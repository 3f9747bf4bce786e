#include "platform/cli/code_pictures.h"

#include "core/base/text.h"
#include "platform/camera/qr_picture.h"
#include "platform/camera/qr_reader.h"
#include "platform/cli/bytes_file.h"
#include "sync/carry/frame_source.h"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QImageReader>

#include <algorithm>
#include <limits>

namespace peelpack::cli {
namespace {

constexpr std::size_t mostPictureBytes = std::size_t{64} * 1024 * 1024;

QByteArray asPng(const QImage& picture)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    picture.save(&buffer, "PNG");
    return bytes;
}

std::optional<QByteArray> codeIn(const keys::Bytes& file)
{
    QByteArray bytes(reinterpret_cast<const char*>(file.data()), static_cast<qsizetype>(file.size()));
    QBuffer buffer(&bytes);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    return camera::readQr(reader.read());
}

} // namespace

base::Result<WrittenCodes> writeCodes(const std::string& folder, const keys::Bytes& parcel, std::size_t spare)
{
    const auto source = carry::FrameSource::of(parcel);
    if (!source) {
        return base::Error{base::ErrorCode::BadValue,
                           "This parcel is larger than the 512 KiB that go by light: write it into a file with --out."};
    }
    if (!QDir().mkpath(QString::fromStdString(folder))) {
        return base::Error{base::ErrorCode::CannotWrite, "Cannot make the folder " + folder + "."};
    }
    constexpr int module = 8; // pixels: a picture of 616 by 616
    constexpr std::size_t allNumbers = std::size_t{std::numeric_limits<std::uint16_t>::max()} + 1;
    const std::size_t plain = source.value().count();
    const std::size_t codes = std::min(plain + spare, allNumbers);
    for (std::size_t i = 0; i < codes; ++i) {
        const QImage picture = camera::qrPicture(source.value().frame(static_cast<std::uint16_t>(i)), module);
        const QByteArray png = asPng(picture);
        const QString name = QStringLiteral("/code-%1.png").arg(i + 1, 5, 10, QLatin1Char('0'));
        const keys::ByteView bytes(reinterpret_cast<const std::uint8_t*>(png.constData()),
                                   static_cast<std::size_t>(png.size()));
        if (const base::Result<bool> kept = writeNewFile(folder + name.toStdString(), bytes); !kept) {
            return kept.error();
        }
    }
    return WrittenCodes{folder, codes, plain};
}

bool isPicture(const std::string& file)
{
    static const QStringList endings{QStringLiteral("png"), QStringLiteral("jpg"), QStringLiteral("jpeg"),
                                     QStringLiteral("webp"), QStringLiteral("bmp")};
    return endings.contains(QFileInfo(QString::fromStdString(file)).suffix().toLower());
}

base::Result<ReadCodes> readCodes(const std::vector<std::string>& pictures)
{
    ReadCodes read;
    carry::Collector collector;
    for (const std::string& picture : pictures) {
        const base::Result<keys::Bytes> file = readBytes(picture, mostPictureBytes);
        if (!file) {
            return file.error();
        }
        const std::optional<QByteArray> code = codeIn(file.value());
        carry::Offered offered;
        if (code) {
            offered = collector.offer(
                {reinterpret_cast<const std::uint8_t*>(code->constData()), static_cast<std::size_t>(code->size())});
        }
        switch (offered.sort) {
        case carry::Offered::Sort::Unusable:
            read.without.push_back(picture);
            break;
        case carry::Offered::Sort::StartedAnew:
            ++read.startedAnew;
            break;
        case carry::Offered::Sort::Complete:
            read.parcels.push_back({"the codes up to " + picture, std::move(offered.parcel)});
            break;
        case carry::Offered::Sort::Taken:
        case carry::Offered::Sort::Known:
            break;
        }
    }
    read.unfinished = collector.unfinished();
    return read;
}

} // namespace peelpack::cli
