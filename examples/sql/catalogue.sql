-- A catalogue to try the functions on. All of it is invented: the shop, its people, the cloth, the prices.
--
-- Nettle & Tarn keep a cupboard of bolts at the end of a lane. Ibbie Nettle cuts, Corin Tarn keeps the book; what they
-- wrote on paper until the ink ran in the flood is what stands below.
--
-- SPDX-License-Identifier: MIT
-- Run from the top of this project, muslin_sql loaded. Lengths are texts with their unit, as people write them.

CREATE TABLE bolt (
    cloth TEXT PRIMARY KEY,
    labelled TEXT NOT NULL,             -- width on the label
    selvage TEXT NOT NULL,              -- cut off each edge
    price INTEGER NOT NULL              -- of a yard, in pence
);
INSERT INTO bolt VALUES
    ('nettle green', '44 in', '1/2 in', 1150),
    ('flood blue',   '42 in', '3/4 in', 980),
    ('lane white',   '108 cm', '1 cm', 760);

-- What the book says is cut for one of Ibbie's table runners; sizes are finished, seams are sewn at 1/4 in.
CREATE TABLE piece (
    runner TEXT NOT NULL,
    cloth TEXT NOT NULL REFERENCES bolt(cloth),
    name TEXT NOT NULL,
    count INTEGER NOT NULL,
    width TEXT NOT NULL,
    height TEXT                         -- of a square nothing is said
);
INSERT INTO piece VALUES
    ('High Water',  'flood blue',   'square',      24, '3 in',     NULL),
    ('High Water',  'lane white',   'square',      24, '3 in',     NULL),
    ('High Water',  'flood blue',   'end strip',    2, '12 in',    '2 in'),
    ('Lane in May', 'nettle green', 'leaf',        18, '4 1/2 in', '2 in'),
    ('Lane in May', 'lane white',   'path',        36, '2 in',     NULL),
    ('Lane in May', 'lane white',   'hem strip',    4, '14 in',    '1 1/2 in');

-- Three of the sample patterns, which are invented too.
CREATE TABLE design (name TEXT PRIMARY KEY, pattern TEXT NOT NULL);
INSERT INTO design VALUES
    ('ferry steps',     muslin_pattern_file('examples/patterns/ferry-steps.json')),
    ('a kite each',     muslin_pattern_file('examples/patterns/a-kite-each.json')),
    ('slipway pebbles', muslin_pattern_file('examples/patterns/slipway-pebbles.json'));
