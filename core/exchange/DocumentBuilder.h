// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/JsonWriter.h"
#include "core/exchange/ImportDocument.h"
#include "core/records/Description.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::exchange {

/// Makes records out of the events of a JSON reader.
///
/// Each event returns false when reading is to stop: after an error that makes the rest
/// meaningless, or after `mostErrors` errors.
class DocumentBuilder {
public:
    bool beginObject();
    bool key(std::string_view name);
    bool endObject();
    bool beginArray();
    bool endArray();
    /// A number with fraction or exponent, or beyond 64 bits, comes as a double, and as it stands
    /// in the text.
    bool scalar(const Scalar &value, std::string_view literal = {});
    /// In place of a value that cannot be represented: an error.
    bool refuse(Message what);
    /// The text is no JSON; nothing follows.
    void stop(Message what);

    /// After the last event.
    DocumentReading finish();

private:
    /// What an open bracket holds.
    enum class Kind {
        Document, ///< the outermost object
        Profile,  ///< anything inside the profile copy
        Records,  ///< the array of one record type
        Fields,   ///< a record, the project, or a row of a list
        Rows,     ///< a list field
        Items,    ///< a set or numbers field
        Skipped,  ///< anything inside a value that is an error already
    };
    struct Frame {
        Kind kind = Kind::Skipped;
        RecordType type = RecordType::Project;
        std::span<const Field> fields{};
        void *owner = nullptr;
        /// Of Fields: the field of the next value, null when that is to be skipped. Of Rows and
        /// Items: the field that they are.
        const Field *field = nullptr;
        /// Of Fields: a bit for each field that stood in the object.
        std::uint64_t seen = 0;
        /// The key of the next value in an object.
        std::optional<std::string> key{};
        /// The number of the next element of an array.
        std::optional<std::size_t> index{};
    };

    Frame &top() { return m_frames.back(); }
    bool isRecord(const Frame &frame) const;
    std::string pointer() const;
    bool report(Message what);
    bool reportAndSkip(Message what);
    bool push(Frame frame);
    /// Closes the innermost bracket; its value is complete.
    void pop();
    /// The value is done: the next one has another key or number.
    void nextElement();

    bool beginPart();
    bool beginRecord();
    bool beginRow();
    bool beginCollection();
    bool fieldKey(std::string_view name);
    bool documentKey(std::string_view name);
    bool documentScalar(const Scalar &value);
    bool fieldScalar(const Scalar &value);
    void profileScalar(const Scalar &value);
    /// The value being read, for a sentence.
    std::string shownAsGiven(const Scalar &value) const;

    bool endFields();
    void endRecord();
    /// Adds the record's name to the errors that were found in it.
    void nameErrors(RecordRef record, const Records &records);
    /// The same for a record that reading stopped in.
    void nameUnfinished();
    bool endProfile();
    void endDocument();

    DocumentReading m_reading;
    std::vector<Frame> m_frames;
    std::set<std::string, std::less<>> m_documentKeys;
    std::shared_ptr<void> m_record;
    /// How the value being read is written in the text, where `Scalar` does not say.
    std::string_view m_literal;
    /// How many errors there were before the record being read.
    std::size_t m_errorsBefore = 0;
    std::ostringstream m_profileText;
    std::unique_ptr<JsonWriter> m_profile;
};

} // namespace lastrivet::exchange
