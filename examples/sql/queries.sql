-- Questions to ask of catalogue.sql. Each stands under what it asks.
--
-- SPDX-License-Identifier: MIT

-- Usable width of each bolt
SELECT cloth, muslin_text(muslin_usable_width(labelled, selvage)) AS usable_width FROM bolt ORDER BY cloth;

-- Cut size of each piece, and how many fit side by side in one strip of its cloth
SELECT runner, name,
       muslin_text(muslin_cut(width, '1/4 in')) AS cut_width,
       muslin_text(muslin_cut(coalesce(height, width), '1/4 in')) AS cut_height,
       muslin_per_strip(muslin_cut(width, '1/4 in'), muslin_usable_width(labelled, selvage)) AS per_strip,
       muslin_text(muslin_narrower_by(muslin_cut(width, '1/4 in'), muslin_usable_width(labelled, selvage)))
           AS cloth_may_be_narrower_by
FROM piece JOIN bolt USING (cloth) ORDER BY runner, name, cloth;

-- The cutting plan of one runner's white cloth, strip by strip
SELECT strip, times, muslin_text(strip_height) AS strip_height, name, count, muslin_text(plan.cut_width) AS width,
       muslin_text(plan.cut_height) AS height
FROM muslin_cutplan(
    (SELECT json_group_array(json_object('count', count, 'name', name, 'width_ticks', muslin_cut(width, '1/4 in'),
                                         'height_ticks', muslin_cut(coalesce(height, width), '1/4 in')))
     FROM piece WHERE runner = 'Lane in May' AND cloth = 'lane white'),
    (SELECT muslin_usable_width(labelled, selvage) FROM bolt WHERE cloth = 'lane white')) AS plan;

-- Cloth and money for each runner: one plan for each of its cloths
WITH list AS (
    SELECT runner, cloth, json_group_array(json_object(
        'count', count, 'width_ticks', muslin_cut(width, '1/4 in'),
        'height_ticks', muslin_cut(coalesce(height, width), '1/4 in'))) AS wanted
    FROM piece GROUP BY runner, cloth),
need AS (
    SELECT runner, cloth, price, (SELECT cloth_length FROM muslin_cutplan(wanted,
        muslin_usable_width(labelled, selvage)) LIMIT 1) AS needed
    FROM list JOIN bolt USING (cloth))
SELECT runner, cloth, muslin_text(needed) AS needed, muslin_text(muslin_bought(needed), 'yd') AS bought,
       muslin_cost(muslin_bought(needed), price) AS pence
FROM need ORDER BY runner, cloth;

-- Every size of every design, finished, and what it takes
SELECT name, size, muslin_text(finished_width, 'in', 8) AS wide, muslin_text(finished_height, 'in', 8) AS long,
       patches, muslin_text(cloth_bought, 'yd') AS cloth_bought, muslin_text(backing_bought, 'yd') AS backing
FROM design, muslin_pattern(design.pattern) AS p ORDER BY name, patches;

-- Sizes that do not lie on the ruler's grid
SELECT name, size, muslin_text(finished_width) AS wide FROM design, muslin_pattern(design.pattern)
WHERE NOT muslin_on_grid(finished_width, '1/8 in') ORDER BY name, finished_width;

-- The same designs with seams of 3/8 in: what changes to buy
SELECT name, a.size, muslin_text(a.cloth_bought, 'yd') AS at_a_quarter_inch,
       muslin_text(b.cloth_bought, 'yd') AS at_3_eighths
FROM design, muslin_pattern(design.pattern) AS a,
     muslin_pattern(json_set(design.pattern, '$.seam', json('{"allowance": "3/8 in"}')), a.size) AS b
WHERE a.cloth_bought <> b.cloth_bought ORDER BY name, a.patches;

-- Fabrics that leave least to spare
SELECT name, f.size, fabric, muslin_text(spare) AS spare FROM design, muslin_pattern_fabrics(design.pattern) AS f
WHERE bought IS NOT NULL ORDER BY f.spare, name, f.size LIMIT 5;

-- What to cut for 24 half-squares of 3 in, by three ways
SELECT m.method, fabric, count, muslin_text(cut_width) AS cut, cut_again, spare_units
FROM (SELECT 'pieces' AS method UNION ALL SELECT 'two-at-a-time' UNION ALL SELECT 'eight-at-a-time') AS m,
     muslin_unit('half-square', '3 in', 24, m.method) AS unit;

-- Backings for 60 x 72 in from cloth of three widths: the best of each
SELECT w.width, layout, panels, muslin_text(bought, 'yd') AS bought
FROM (SELECT '42 in' AS width UNION ALL SELECT '60 in' UNION ALL SELECT '108 in') AS w,
     muslin_backing('60 in', '72 in', w.width) AS b WHERE best;
