#include "tests/platform/support/forge.h"

#include <QCoreApplication>

#include <iostream>

// peelpack_forge keys|rows VAULT: the first line of standard input is the vault code; every further line is a request
// and is answered by a line.
namespace {

template <class Forge>
void serve(const std::string& vault, const std::string& code)
{
    Forge forge(vault, code);
    std::cout << "{}" << std::endl;
    for (std::string line; std::getline(std::cin, line);) {
        std::cout << forge.answer(nlohmann::json::parse(line)).dump() << std::endl;
    }
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3) {
        std::cerr << "peelpack_forge keys|rows VAULT\n";
        return 2;
    }
    try {
        std::string code;
        std::getline(std::cin, code);
        const auto run =
            std::string(argv[1]) == "rows" ? serve<peelpack::test::RowForge> : serve<peelpack::test::KeyForge>;
        run(argv[2], code);
    } catch (const std::exception& error) {
        std::cerr << error.what() << "\n";
        return 1;
    }
    return 0;
}
