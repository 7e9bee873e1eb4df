#include "gui/language.h"

#include <langinfo.h>
#include <locale.h>

#include <wx/filename.h>
#include <wx/stdpaths.h>
#include <wx/translation.h>

#include "gui/widgets/text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

namespace {

constexpr const char* kCatalogue = "dyestead";

std::string translated(std::string_view english) {
    return typed(wxGetTranslation(shown(english), kCatalogue));
}

std::string counted(std::string_view one, std::string_view many, std::uint64_t count) {
    return typed(wxGetTranslation(shown(one), shown(many), static_cast<unsigned>(count), kCatalogue));
}

}  // namespace

void choose_language() {
    // Beside the program, wherever it was put: build/dev/gui and build/dev/share, /usr/bin and /usr/share.
    wxFileName catalogues{wxStandardPaths::Get().GetExecutablePath()};
    catalogues.RemoveLastDir();
    catalogues.AppendDir("share");
    catalogues.AppendDir("locale");
    wxFileTranslationsLoader::AddCatalogLookupPathPrefix(catalogues.GetPath());
    // No wxLocale: that one changes how the whole process reads and writes numbers.
    auto* translations = new wxTranslations;
    wxTranslations::Set(translations);
    const wxString language = translations->GetBestTranslation(kCatalogue, wxLANGUAGE_ENGLISH);
    if (!language.empty()) {
        // One language for all catalogues, or stock buttons come in another than our own texts.
        translations->SetLanguage(language);
        translations->AddStdCatalog();
        translations->AddCatalog(kCatalogue);
    }
    reports::set_translation({translated, counted});
}

std::string currency_here() {
    constexpr std::size_t kLetters = 3;
    std::string code;
    if (const locale_t region = newlocale(LC_MONETARY_MASK, "", locale_t{})) {
        code = std::string{nl_langinfo_l(INT_CURR_SYMBOL, region)}.substr(0, kLetters);
        freelocale(region);
    }
    return code.size() == kLetters ? code : std::string{"GBP"};
}

}  // namespace dyestead::gui
