-- The words of the records, each once: titles are not repeated among the other texts, and nothing
-- counts them, since hits stand by kind and age. Its rows are made anew after this step.
-- SPDX-License-Identifier: GPL-3.0-or-later

DROP TABLE "search";

CREATE VIRTUAL TABLE "search" USING fts5 (
    "title", "body", tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3', columnsize = 0
);
