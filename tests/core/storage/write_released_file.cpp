// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the file that a released version leaves in tests/data: write_released_file FILE. Run once per
// version of the schema; released_files_test opens the result for ever.
#include "tests/core/storage/opened_history.h"

int main(int argc, char** argv)
{
    using namespace sealwalk;
    if (argc != 2)
        return 2;
    storage::HistoryStore store = tests::openAt(argv[1], storage::HistoryStore::Mode::Create);
    const bool written = store.importJob(tests::sampleObject(), tests::wholeJobWithVoidMeasurement(),
                                         {tests::samplePicture()}) &&
                         store.putSetting("language", "en") && store.putPerson(tests::samplePerson(), "Ada");
    return written ? 0 : 1;
}
