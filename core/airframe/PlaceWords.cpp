// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/airframe/PlaceWords.h"

#include "core/base/CaseFold.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>
#include <string>

namespace lastrivet::airframe {

namespace {

/// The letters of a text, a bit each: most words are ruled out by one letter that it lacks.
constexpr std::uint32_t lettersOf(std::string_view text)
{
    std::uint32_t letters = 0;
    for (const char c : text) {
        if (c >= 'a' && c <= 'z')
            letters |= std::uint32_t{1} << (c - 'a');
    }
    return letters;
}

/// Words without accents; a space at an end is the edge of a word there.
struct Phrase {
    constexpr Phrase(const char *words)
        : text(words)
        , letters(lettersOf(text))
    {
    }

    std::string_view text;
    std::uint32_t letters;
};

struct Row {
    Phrase words;
    Spot spot;
};

using enum Spot;

/// The first row that a text holds counts, so what is special comes before what is general.
constexpr std::array rows{
    Row{" tail wheel", TailWheel},
    Row{" tailwheel", TailWheel},
    Row{"spornrad", TailWheel},
    Row{"heckrad", TailWheel},
    Row{" roulette de queue", TailWheel},
    Row{" tail skid", TailWheel},
    Row{" nose wheel", NoseWheel},
    Row{" nosewheel", NoseWheel},
    Row{" nose gear", NoseWheel},
    Row{" nose leg", NoseWheel},
    Row{"bugrad", NoseWheel},
    Row{"bugfahrwerk", NoseWheel},
    Row{" roue avant", NoseWheel},
    Row{" roulette de nez", NoseWheel},
    Row{" train avant", NoseWheel},
    Row{" main wheel", MainWheel},
    Row{" main gear", MainWheel},
    Row{" main leg", MainWheel},
    Row{" left main ", MainWheel},
    Row{" right main ", MainWheel},
    Row{"hauptfahrwerk", MainWheel},
    Row{"hauptrad", MainWheel},
    Row{" train principal", MainWheel},
    Row{" undercarriage", Gear},
    Row{" landing gear", Gear},
    Row{"fahrwerk", Gear},
    Row{" train d atterrissage", Gear},
    Row{" gear ", Gear},
    Row{" train ", Gear},
    Row{" canard", Foreplane},
    Row{" foreplane", Foreplane},
    Row{"entenflugel", Foreplane},
    Row{"kopfflugel", Foreplane},
    Row{" plan avant", Foreplane},
    Row{" aileron", Aileron},
    Row{" flaperon", Aileron},
    Row{"querruder", Aileron},
    Row{"landeklappe", Flap},
    Row{"wolbklappe", Flap},
    Row{"spreizklappe", Flap},
    Row{" flap", Flap},
    Row{" klappe", Flap},
    Row{" volet", Flap},
    Row{" wing tank", WingTank},
    Row{"flugeltank", WingTank},
    Row{"fluegeltank", WingTank},
    Row{"flachentank", WingTank},
    Row{" reservoir d aile", WingTank},
    Row{" left tank", WingTank},
    Row{" right tank", WingTank},
    Row{" fuselage tank", FuselageTank},
    Row{" header tank", FuselageTank},
    Row{"rumpftank", FuselageTank},
    Row{" reservoir de fuselage", FuselageTank},
    Row{" tank", Tank},
    Row{"tank ", Tank},
    Row{" reservoir", Tank},
    Row{" elevator", Elevator},
    Row{"hohenruder", Elevator},
    Row{"hoehenruder", Elevator},
    Row{" profondeur", Elevator},
    Row{" rudder ", Rudder},
    Row{"seitenruder", Rudder},
    Row{" gouvernail", Rudder},
    Row{" gouverne de direction", Rudder},
    Row{" stabilis", Stabiliser},
    Row{" stabiliz", Stabiliser},
    Row{" tailplane", Stabiliser},
    Row{"hohenleitwerk", Stabiliser},
    Row{"hoehenleitwerk", Stabiliser},
    Row{"hohenflosse", Stabiliser},
    Row{"hoehenflosse", Stabiliser},
    Row{" plan horizontal", Stabiliser},
    Row{" fin ", Fin},
    Row{" fins ", Fin},
    Row{" winglet", Fin},
    Row{"seitenflosse", Fin},
    Row{"seitenleitwerk", Fin},
    Row{" derive", Fin},
    Row{" rear fuselage", RearFuselage},
    Row{" aft fuselage", RearFuselage},
    Row{" tail cone", RearFuselage},
    Row{" tailcone", RearFuselage},
    Row{" tail boom", RearFuselage},
    Row{" turtle deck", RearFuselage},
    Row{"rumpfheck", RearFuselage},
    Row{"heckrumpf", RearFuselage},
    Row{"hinterrumpf", RearFuselage},
    Row{" hinterer rumpf", RearFuselage},
    Row{"leitwerkstrager", RearFuselage},
    Row{" fuselage arriere", RearFuselage},
    Row{" arriere du fuselage", RearFuselage},
    Row{" centre fuselage", CentreFuselage},
    Row{" center fuselage", CentreFuselage},
    Row{" centre section", CentreFuselage},
    Row{" center section", CentreFuselage},
    Row{" belly", CentreFuselage},
    Row{"rumpfmitte", CentreFuselage},
    Row{"mittelrumpf", CentreFuselage},
    Row{" fuselage central", CentreFuselage},
    Row{" firewall", EngineBay},
    Row{" engine", EngineBay},
    Row{" cowl", EngineBay},
    Row{" propeller", EngineBay},
    Row{"brandspant", EngineBay},
    Row{"brandschott", EngineBay},
    Row{"triebwerk", EngineBay},
    Row{" motor", EngineBay},
    Row{" moteur", EngineBay},
    Row{" helice", EngineBay},
    Row{" cloison pare feu", EngineBay},
    Row{" capot", EngineBay},
    Row{" cockpit", Cockpit},
    Row{" cabin ", Cockpit},
    Row{" cabine ", Cockpit},
    Row{" canopy", Cockpit},
    Row{" seat", Cockpit},
    Row{" instrument panel", Cockpit},
    Row{"kabine", Cockpit},
    Row{" kabinenhaube", Cockpit},
    Row{"instrumentenbrett", Cockpit},
    Row{" sitz", Cockpit},
    Row{" habitacle", Cockpit},
    Row{" verriere", Cockpit},
    Row{" siege", Cockpit},
    Row{" tableau de bord", Cockpit},
    Row{" lower wing", LowerWing},
    Row{" lower left wing", LowerWing},
    Row{" lower right wing", LowerWing},
    Row{" left lower wing", LowerWing},
    Row{" right lower wing", LowerWing},
    Row{" bottom wing", LowerWing},
    Row{"unterflugel", LowerWing},
    Row{" unterer flugel", LowerWing},
    Row{" unterer linker flugel", LowerWing},
    Row{" unterer rechter flugel", LowerWing},
    Row{" aile inferieure", LowerWing},
    Row{" upper wing", UpperWing},
    Row{" upper left wing", UpperWing},
    Row{" upper right wing", UpperWing},
    Row{" left upper wing", UpperWing},
    Row{" right upper wing", UpperWing},
    Row{" top wing", UpperWing},
    Row{"oberflugel", UpperWing},
    Row{" oberer flugel", UpperWing},
    Row{" oberer linker flugel", UpperWing},
    Row{" oberer rechter flugel", UpperWing},
    Row{" aile superieure", UpperWing},
    Row{" wing ", Wing},
    Row{" wings ", Wing},
    Row{" wing tip", Wing},
    Row{"flugel", Wing},
    Row{"fluegel", Wing},
    Row{"tragflache", Wing},
    Row{"tragflaeche", Wing},
    Row{" aile ", Wing},
    Row{" ailes ", Wing},
    Row{" voilure", Wing},
    Row{" tail ", Tail},
    Row{" empennage", Tail},
    Row{"leitwerk", Tail},
    Row{" heck ", Tail},
    Row{" queue ", Tail},
    Row{" fuselage", Fuselage},
    Row{"rumpf", Fuselage},
};

constexpr Phrase leftWords[] = {" left ", " port ", " lh ", " links ", " linke", " gauche "};
constexpr Phrase rightWords[] = {" right ", " starboard ", " rh ",    " rechts ",
                                 " rechte", " droit ",     " droite "};

/// The letter without its accent, of a Latin-1 letter written in UTF-8 after 0xC3; 0 for others.
char plainLetter(unsigned char second)
{
    // From U+00E0 on: à á â ã ä å æ ç è é ê ë ì í î ï ð ñ ò ó ô õ ö ÷ ø ù ú û ü ý þ ÿ.
    constexpr std::string_view plain = "aaaaaa\0ceeeeiiii\0nooooo\0ouuuuy\0y";
    constexpr std::string_view table(plain.data(), 32);
    return second >= 0xA0 && second < 0xA0 + table.size() ? table[second - 0xA0] : '\0';
}

/// Small letters without accents, words set apart by one space, a space at both ends.
std::string plainWords(std::string_view text)
{
    const std::string small = folded(text);
    std::string words = " ";
    for (std::size_t i = 0; i < small.size(); ++i) {
        const auto byte = static_cast<unsigned char>(small[i]);
        char letter = small[i];
        if (byte == 0xC3 && i + 1 < small.size()) {
            letter = plainLetter(static_cast<unsigned char>(small[++i]));
        } else if (byte == 0xC2 || byte == 0xE2) {
            // Hyphens, dashes and apostrophes that are not ASCII.
            letter = 0;
            i += byte == 0xC2 ? 1 : 2;
        }
        const bool isLetter = letter != 0 && (byte >= 0x80 || (letter >= 'a' && letter <= 'z') ||
                                              (letter >= '0' && letter <= '9'));
        if (isLetter)
            words += letter;
        else if (words.back() != ' ')
            words += ' ';
    }
    if (words.back() != ' ')
        words += ' ';
    return words;
}

/// A text that words are looked for in.
class Searched {
public:
    explicit Searched(std::string_view text)
        : m_words(plainWords(text))
        , m_letters(lettersOf(m_words))
    {
    }

    bool holds(const Phrase &phrase) const
    {
        return (phrase.letters & ~m_letters) == 0 && m_words.find(phrase.text) != std::string::npos;
    }
    bool holdsOneOf(std::span<const Phrase> several) const
    {
        return std::ranges::any_of(several, [this](const Phrase &phrase) { return holds(phrase); });
    }

private:
    std::string m_words;
    std::uint32_t m_letters;
};

} // namespace

Place placeNamed(std::string_view text)
{
    if (text.empty())
        return {};
    const Searched searched(text);
    Place place;
    const auto row =
        std::ranges::find_if(rows, [&](const Row &known) { return searched.holds(known.words); });
    if (row != rows.end())
        place.spot = row->spot;
    const bool isLeft = searched.holdsOneOf(leftWords);
    const bool isRight = searched.holdsOneOf(rightWords);
    if (isLeft != isRight)
        place.side = isLeft ? Side::Left : Side::Right;
    return place;
}

bool liesIn(Spot inner, Spot outer)
{
    const auto isOneOf = [inner](std::initializer_list<Spot> spots) {
        return std::ranges::find(spots, inner) != spots.end();
    };
    switch (outer) {
    case Wing:
    case UpperWing:
    case LowerWing:
        return isOneOf({UpperWing, LowerWing, WingTank, Aileron, Flap, Tank}) && inner != outer;
    case Tail:
        return isOneOf({Stabiliser, Elevator, Fin, Rudder, RearFuselage, TailWheel});
    case Fuselage:
        return isOneOf({EngineBay, Cockpit, CentreFuselage, RearFuselage, FuselageTank, Tank});
    case Cockpit:
    case CentreFuselage:
    case RearFuselage:
        return isOneOf({FuselageTank, Tank});
    case Gear:
        return isOneOf({MainWheel, NoseWheel, TailWheel});
    case Tank:
        return isOneOf({WingTank, FuselageTank});
    default:
        return false;
    }
}

} // namespace lastrivet::airframe
