// The same door from C++: an answer that gives itself back, a refusal as an exception. verdict_cpp JOINT.json
#include "../shankline.h"

#include <fstream>
#include <iostream>
#include <iterator>
#include <stdexcept>
#include <string>

namespace {

// What the library refuses; what() is the error document.
class Refusal : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

class Answer {
public:
    Answer() = default;
    Answer(const Answer &) = delete;
    Answer &operator=(const Answer &) = delete;
    ~Answer() { shankline_free(&held); }
    shankline_answer held{nullptr, 0};
};

std::string ask(const std::string &question, const std::string &request)
{
    Answer answer;
    const auto status = shankline_ask(question.c_str(), request.data(), request.size(), &answer.held);
    if (status == SHANKLINE_MISUSED) {
        throw std::logic_error("shankline was called wrongly");
    }
    std::string text(answer.held.text, answer.held.length);
    if (status != SHANKLINE_ANSWERED) {
        throw Refusal(text);
    }
    return text;
}

} // namespace

int main(int count, char **arguments)
{
    if (count != 2 || shankline_interface() != SHANKLINE_INTERFACE) {
        std::cerr << "verdict_cpp JOINT.json\n";
        return 2;
    }
    std::ifstream file(arguments[1], std::ios::binary);
    const std::string joint((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
    try {
        std::cout << ask("explain", R"({"show": "report", "format": "text", "joint": )" + joint + "}") << '\n';
        return 0;
    } catch (const Refusal &refusal) {
        std::cerr << refusal.what() << '\n';
        return 2;
    }
}
