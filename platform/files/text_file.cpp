#include "platform/files/text_file.h"

#include <QFile>
#include <QSaveFile>
#include <QString>

#include <cstdio>
#include <vector>

namespace peelpack::files {
namespace {

constexpr qint64 pieceBytes = qint64{1} << 20;

base::Error cannot(base::ErrorCode code, std::string_view verb, const std::string& file, const QString& cause)
{
    return {code, "Cannot " + std::string(verb) + " " + (file == "-" ? "standard input" : file) + ": " +
                      cause.toStdString() + "."};
}

} // namespace

base::Result<std::size_t> readPieces(const std::string& file, const std::function<bool(std::string_view)>& take)
{
    QFile input(QString::fromStdString(file));
    const bool opened = file == "-" ? input.open(stdin, QIODevice::ReadOnly) : input.open(QIODevice::ReadOnly);
    if (!opened) {
        return cannot(base::ErrorCode::CannotRead, "read", file, input.errorString());
    }
    std::vector<char> piece(static_cast<std::size_t>(pieceBytes));
    std::size_t total = 0;
    while (true) {
        const qint64 got = input.read(piece.data(), pieceBytes);
        if (got < 0) {
            return cannot(base::ErrorCode::CannotRead, "read", file, input.errorString());
        }
        total += static_cast<std::size_t>(got);
        if (got == 0 || !take(std::string_view(piece.data(), static_cast<std::size_t>(got)))) {
            return total;
        }
    }
}

base::Result<std::string> readWholeFile(const std::string& file, std::size_t most)
{
    std::string text;
    const base::Result<std::size_t> read = readPieces(file, [&](std::string_view piece) {
        text += piece;
        return text.size() <= most;
    });
    if (!read) {
        return read.error();
    }
    if (text.size() > most) {
        return base::Error{base::ErrorCode::BadInput, file + " is larger than " + std::to_string(most) +
                                                          " bytes; check that it is the right file."};
    }
    return text;
}

base::Result<std::size_t> writeWholeFile(const std::string& file, std::string_view text)
{
    QSaveFile output(QString::fromStdString(file));
    const bool written =
        output.open(QIODevice::WriteOnly) &&
        output.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size()) &&
        output.commit();
    if (!written) {
        return cannot(base::ErrorCode::CannotWrite, "write", file, output.errorString());
    }
    return text.size();
}

std::string normalized(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))
        .normalized(QString::NormalizationForm_C)
        .toStdString();
}

} // namespace peelpack::files
