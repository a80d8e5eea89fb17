/** Every figure of the jar tables, and of running a canner, written a second time from the pages that print it. */
import { describe, expect, test } from 'vitest';
import { canningRules } from '../../src/process/index';
import { readTable } from '../helpers/tables';

type Row = Readonly<Record<string, unknown>>;
const rows = (table: string): Row[] => readTable('jars', table).rows;
/** Columns that hold figures; the rest are names, texts and where they stand. */
const NOT_FIGURES = new Set([
  'id',
  'name',
  'plural',
  'synonyms',
  'text',
  'source',
  'locator',
  'obtained',
  'seen',
  'notes',
]);

/** Tables whose rows have no other name. */
const NAMED_BY_ID = new Set(['seal-rules', 'vacuum-facts']);

/** A row's figures in one line: `pint 16 473.176473`. */
const line = (row: Row, table: string): string =>
  Object.entries(row)
    .filter(([column]) => !NOT_FIGURES.has(column) || (column === 'id' && NAMED_BY_ID.has(table)))
    .map(([, value]) => value)
    .join(' | ');

const PAGES: Readonly<Record<string, readonly string[]>> = {
  // Guide 1 (2015, p. 1-13); Penn State, Clemson, Illinois, Michigan State and Nebraska extension; pie-filling pages
  headspace: [
    'jam | jams and jellies | 0.25 | 0.25',
    'fruit | fruits and tomatoes in boiling water | 0.5 | 0.5',
    'tomato | fruits and tomatoes in boiling water | 0.5 | 0.5',
    'pickle | pickles | 0.5 | 0.5',
    'low-acid | low-acid foods in a pressure canner | 1 | 1.25',
    'vegetable | vegetables (starch expansion) | 1 | 1',
    'meat | red meats | 1 | 1',
    'poultry | poultry | 1.25 | 1.25',
    'swelling | some vegetables and meats | 1.25 | 1.5',
    'jam | jams, jellies, butters, preserves | 0.25 | 0.25',
    'juice | fruit juices and purees | 0.25 | 0.25',
    'fruit | fruit pieces, pickles | 0.5 | 0.5',
    'pickle | fruit pieces, pickles | 0.5 | 0.5',
    'grape | whole grapes | 1 | 1',
    'pie-filling | starch-thickened pie fillings, mincemeat | 1 | 1',
  ],
  // AIB 539, quantity lines; Michigan State pages 01600496 and 01600948; Wisconsin (4 quarts); the rest recalled
  'canner-loads': [
    'usual | quart | 7 | 7',
    'usual | pint | 9 | 9',
    'usual | quart | 7 | 7',
    'usual | pint | 8 | 9',
    'usual | quart | 7 | 7',
    'usual | pint | 8 | 9',
    'small | quart | 4 | 4',
    'small | quart | 4 | 4',
    'large | quart | 7 | 7',
    'large | pint | 18 | 18',
    'large | pint | 18 | 18',
  ],
  // recalled: at least 2 quarts or 4 pints
  'least-loads': ['pint | 4', 'quart | 2'],
  // Guide 1 (2015, p. 1-25 to 1-27); AIB 539; California (50 to 70 degF, a year); 1977 yearbook; liquid: Nebraska
  'seal-rules': [
    'cool-first | 12 | 24 | h',
    'no-retightening',
    'cooling-space | 2 | 3 | in',
    'press',
    'tap',
    'look',
    'reprocess-within | 24 | 24 | h',
    'freeze-instead | 1.5 | 1.5 | in',
    'refrigerate-instead',
    'store-cool | 50 | 50 | degF',
    'store-warm | 70 | 70 | degF',
    'use-within | 12 | 12 | month',
    'never-above | 95 | 95 | degF',
    'frozen-by-accident',
    'bands-off',
    'check-monthly | 1 | 1 | per month',
    'never-refill',
    'level-falls',
    'liquid-may-darken',
    'half-the-liquid | 0.5 | 0.5 | share of the liquid',
    'floating-fruit | 2 | 3 | month',
    'less-than-half-lost',
    'more-than-half-lost | 2 | 3 | day',
    'spoiled',
    'detoxify | 30 | 30 | min',
  ],
  // Army MD0708, lesson 2; FDA guide to inspections
  'vacuum-facts': [
    'inhg-per-psi-rule | 2 | inHg per psi',
    'inhg-per-psi | 2.03602 | inHg',
    'normal-atmosphere-psi | 14.7 | psi',
    'normal-atmosphere-inhg | 29.92 | inHg',
    'gross-and-net',
    'inspection-step | 0.03125 | in',
    'too-little-or-much',
    'least-share | 6 | % of volume',
  ],
  // IASRI lesson 3.2.3.3: 10 cmHg, 12 to 15 and 9 to 12 inHg
  'container-vacuums': [
    'fish in round tall cans, Indian standard | 100 | 100 | mmHg',
    'small cans | 12 | 15 | inHg',
    'large cans | 9 | 12 | inHg',
  ],
};

describe('the figures of the jar tables are those of the pages', () => {
  test.each(Object.entries(PAGES))('%s', (table, pages) => {
    expect(rows(table).map((row) => line(row, table))).toEqual(pages);
  });
});

// Guide 1 (2015), p. 1-13 to 1-35, unless another page is named
test.each<[string, number, number, string]>([
  ['water', 2, 3, 'in'],
  ['vent', 10, 10, 'min'],
  ['pressurize', 3, 5, 'min'],
  ['depressurize-pints', 30, 30, 'min'],
  ['depressurize-quarts', 45, 45, 'min'],
  ['wait-before-opening', 10, 10, 'min'],
  ['temperature', 240, 250, 'degF'],
  ['time-range', 20, 100, 'min'],
  ['highest-pressure', 15, 15, 'psi'],
  ['smallest-canner', 4, 4, 'quart jars'],
  ['water-over-jars', 1, 1, 'in'],
  ['water-over-jars-long', 2, 2, 'in'],
  ['preheat-raw', 140, 140, 'degF'],
  ['preheat-hot', 180, 180, 'degF'],
  ['rest', 5, 5, 'min'],
  // Michigan State 01600496
  ['element', 4, 4, 'in'],
  ['jar-spacing', 1, 1, 'in'],
  ['cool-jars', 12 * 60, 24 * 60, 'min'],
  ['detoxify', 30, 30, 'min'],
  // the national center's page on steam canners
  ['steam-acid-foods', 4.6, 4.6, 'pH'],
  ['steam-time', 45, 45, 'min'],
  ['sterilize', 10, 10, 'min'],
  ['rest-in-opened-canner', 5, 5, 'min'],
  ['steam-temperature', 212, 212, 'degF'],
  // Missouri; Wisconsin prints 6 to 8 in
  ['steam-column', 8, 10, 'in'],
  ['highest-dial-elevation', 8000, 8000, 'ft'],
  ['single-layer', 7, 7, 'quart jars'],
  ['single-layer-pints', 8, 9, 'pint jars'],
  ['two-layers', 18, 18, 'pint jars'],
  // Guide 6: 1 in over the jars, 30 min at 180 to 185 degF
  ['low-temperature-pasteurization', 180, 185, 'degF'],
])('running a canner: %s is %d to %d %s', (name, low, high, unit) => {
  const found = canningRules().rules.find(({ id: rule }) => rule === name);
  expect([found?.low, found?.high, found?.unit]).toEqual([low, high, unit]);
  // the words say the same figure, hours where the table holds minutes of a day
  const words: Record<string, RegExp> = {
    'smallest-canner': /four quart/,
    'cool-jars': /12 to 24 hours/,
    'highest-pressure': /15 psi/,
    'highest-dial-elevation': /8,000 ft/,
    'low-temperature-pasteurization': /1 inch over them.*30 minutes at 180 to 185 degF/,
  };
  expect(found?.text).toMatch(words[name] ?? new RegExp(`\\b${low}\\b`));
});
