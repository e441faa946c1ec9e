// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PdfFinish.h"

#include "core/base/Error.h"
#include "core/base/Sha256.h"
#include "ui/print/NewFile.h"
#include "ui/print/Pages.h"
#include "ui/print/PdfNavigation.h"
#include "ui/print/PdfOrder.h"
#include "ui/print/Placeholder.h"

#include <qpdf/Buffer.hh>
#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <array>
#include <cstdint>
#include <fstream>
#include <string_view>
#include <utility>

namespace lastrivet::print {

namespace {

using Handle = QPDFObjectHandle;

/// What QPDF writes as the document's identifier when it is asked for a fixed one.
constexpr std::string_view fixedIdentifier = "<31415926535897932384626433832795>";

/// Takes what the writer of the document gives, into the new file, and then puts a sum of all of it
/// in place of the fixed identifier. QPDF's own deterministic identifier is a sum, too, by MD5,
/// which with many photographs takes longer than the writing.
class IntoFile final : public Pipeline {
public:
    explicit IntoFile(NewFile &file)
        : Pipeline("document", nullptr)
        , m_file(file)
    {
    }
    void write(const unsigned char *bytes, size_t count) override
    {
        if (std::string_view(reinterpret_cast<const char *>(bytes), count) == fixedIdentifier)
            m_identifiers.push_back(m_written);
        m_sum.add({bytes, count});
        m_file.write(bytes, count);
        m_written += count;
    }
    void finish() override {}
    /// To be called once, after everything is written.
    void identify()
    {
        const std::string sum = hex(m_sum.digest()).substr(0, fixedIdentifier.size() - 2);
        for (const std::uint64_t at : m_identifiers)
            m_file.overwrite(at, "<" + sum + ">");
    }

private:
    NewFile &m_file;
    Sha256 m_sum;
    std::uint64_t m_written = 0;
    std::vector<std::uint64_t> m_identifiers;
};

/// Gives the bytes of a file at the time of writing, so that memory holds one block of one picture.
class FromFile final : public Handle::StreamDataProvider {
public:
    explicit FromFile(std::filesystem::path file)
        : m_file(std::move(file))
    {
    }
    void provideStreamData(const QPDFObjGen &, Pipeline *pipeline) override
    {
        std::ifstream stream(m_file, std::ios::binary);
        std::array<char, 65536> block;
        while (stream.read(block.data(), block.size()) || stream.gcount() > 0)
            pipeline->write(reinterpret_cast<const unsigned char *>(block.data()),
                            size_t(stream.gcount()));
        if (!stream.eof())
            throw Fault(Message{"The picture {0} could not be read.", {m_file.string()}});
        pipeline->finish();
    }

private:
    std::filesystem::path m_file;
};

class Tell final : public QPDFWriter::ProgressReporter {
public:
    explicit Tell(OnPercent onPercent)
        : m_onPercent(std::move(onPercent))
    {
    }
    void reportProgress(int percent) override
    {
        if (m_onPercent && !m_onPercent(percent))
            throw Cancelled{};
    }

private:
    OnPercent m_onPercent;
};

Handle text(const std::string &value)
{
    return Handle::newUnicodeString(value);
}

/// Puts a picture's bytes and particulars where a placeholder was.
void embed(Handle image, const EmbeddedPicture &picture)
{
    Handle dictionary = image.getDict();
    for (const char *key :
         {"/ImageMask", "/Decode", "/DecodeParms", "/Interpolate", "/SMask", "/Mask", "/Intent"})
        dictionary.removeKey(key);
    constexpr std::array<const char *, 5> spaces{"", "/DeviceGray", "", "/DeviceRGB",
                                                 "/DeviceCMYK"};
    const JpegHeader &header = picture.header;
    dictionary.replaceKey("/Width", Handle::newInteger(header.width));
    dictionary.replaceKey("/Height", Handle::newInteger(header.height));
    dictionary.replaceKey("/BitsPerComponent", Handle::newInteger(8));
    dictionary.replaceKey("/ColorSpace", Handle::newName(spaces[std::size_t(header.components)]));
    // Programs for printing presses write their four inks turned over.
    if (header.components == 4)
        dictionary.replaceKey("/Decode", Handle::parse("[1 0 1 0 1 0 1 0]"));
    image.replaceStreamData(std::make_shared<FromFile>(picture.file), Handle::newName("/DCTDecode"),
                            Handle::newNull());
}

bool mayBePlaceholder(Handle image)
{
    return image.getDict().getKey("/Height").isInteger() &&
           image.getDict().getKey("/Height").getIntValue() == 1;
}

void embedPictures(QPDF &pdf, const std::vector<EmbeddedPicture> &pictures)
{
    for (QPDFPageObjectHelper &page : QPDFPageDocumentHelper(pdf).getAllPages()) {
        for (auto &[name, image] : page.getImages()) {
            if (!mayBePlaceholder(image))
                continue;
            const std::shared_ptr<Buffer> bytes = image.getStreamData(qpdf_dl_generalized);
            const std::optional<int> index =
                indexOf({reinterpret_cast<const char *>(bytes->getBuffer()), bytes->getSize()});
            if (index && std::size_t(*index) < pictures.size())
                embed(image, pictures[std::size_t(*index)]);
        }
    }
}

/// Replaces what Qt wrote about the document, whose dates differ from run to run.
void setParticulars(QPDF &pdf, const PdfFinish &finish)
{
    Handle info = Handle::newDictionary();
    info.replaceKey("/Title", text(finish.title));
    info.replaceKey("/Author", text(finish.author));
    info.replaceKey("/Subject", text(finish.subject));
    info.replaceKey("/Creator", text("Lastrivet " LASTRIVET_VERSION));
    info.replaceKey("/CreationDate", Handle::newString(finish.made_on));
    info.replaceKey("/ModDate", Handle::newString(finish.made_on));
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(info));
    pdf.getRoot().replaceKey("/Lang", text(finish.language));
    pdf.getRoot().replaceKey("/ViewerPreferences", Handle::parse("<< /DisplayDocTitle true >>"));
    pdf.getRoot().removeKey("/Metadata");
    pdf.getTrailer().removeKey("/ID");
}

void write(QPDF &pdf, const std::filesystem::path &place, const OnPercent &onPercent)
{
    NewFile file(place);
    IntoFile pipeline(file);
    QPDFWriter writer(pdf);
    writer.setOutputPipeline(&pipeline);
    writer.setStreamDataMode(qpdf_s_preserve);
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.setStaticID(true);
    writer.registerProgressReporter(std::make_shared<Tell>(onPercent));
    writer.write();
    pipeline.identify();
    file.finish();
}

} // namespace

void finishPdf(const QByteArray &pages, const PdfFinish &finish, const std::filesystem::path &place,
               const OnPercent &onPercent)
{
    try {
        const std::shared_ptr<Buffer> ordered = inOrder(pages);
        QPDF pdf;
        pdf.processMemoryFile("pages", reinterpret_cast<const char *>(ordered->getBuffer()),
                              ordered->getSize());
        embedPictures(pdf, finish.pictures);
        addBookmarks(pdf, finish);
        addLinks(pdf, finish);
        setParticulars(pdf, finish);
        write(pdf, place, onPercent);
    } catch (const Fault &) {
        throw;
    } catch (const std::exception &error) {
        throw Fault(Message{"{0} could not be made: {1}", {place.string(), error.what()}});
    }
}

} // namespace lastrivet::print
