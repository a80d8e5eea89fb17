/** Conversions: the same texts and the same amounts by the libraries that people use for units. */
import convert from 'convert';
import configureMeasurements from 'convert-units';
import measures from 'convert-units/definitions/all';
import Qty from 'js-quantities';
import { create, all as mathAll } from 'mathjs';
import * as stillroom from 'stillroom';
import unitmath from 'unitmath';
import { beside } from './measure.mjs';
import { note, section, tell } from './report.mjs';

/** Each unit as each library calls it. */
const UNITS = {
  cup: { math: 'cup', qty: 'cu', unitmath: 'cup', units: 'cup', convert: 'cups' },
  mL: { math: 'mL', qty: 'ml', unitmath: 'mL', units: 'ml', convert: 'milliliters' },
  tbsp: { math: 'tablespoon', qty: 'tbs', unitmath: 'tbsp', units: 'Tbs', convert: 'tablespoons' },
  tsp: { math: 'teaspoon', qty: 'tsp', unitmath: 'tsp', units: 'tsp', convert: 'teaspoons' },
  gallon: { math: 'gallon', qty: 'gal', unitmath: 'gal', units: 'gal', convert: 'gallons' },
  L: { math: 'L', qty: 'l', unitmath: 'L', units: 'l', convert: 'liters' },
  lb: { math: 'lb', qty: 'lbs', unitmath: 'lb', units: 'lb', convert: 'pounds' },
  kg: { math: 'kg', qty: 'kg', unitmath: 'kg', units: 'kg', convert: 'kilograms' },
  oz: { math: 'oz', qty: 'oz', unitmath: 'oz', units: 'oz', convert: 'ounces' },
  g: { math: 'g', qty: 'g', unitmath: 'g', units: 'g', convert: 'grams' },
  ft: { math: 'ft', qty: 'ft', unitmath: 'ft', units: 'ft', convert: 'feet' },
  m: { math: 'm', qty: 'm', unitmath: 'm', units: 'm', convert: 'meters' },
  in: { math: 'inch', qty: 'in', unitmath: 'in', units: 'in', convert: 'inches' },
  degF: { math: 'degF', qty: 'tempF', unitmath: 'degF', units: 'F', convert: 'fahrenheit' },
  degC: { math: 'degC', qty: 'tempC', unitmath: 'degC', units: 'C', convert: 'celsius' },
};
const ASKED = [
  [1.5, 'cup', 'mL'],
  [2.25, 'lb', 'kg'],
  [12, 'oz', 'g'],
  [0.75, 'tsp', 'mL'],
  [3, 'tbsp', 'cup'],
  [1.25, 'gallon', 'L'],
  [3400, 'ft', 'm'],
  [0.5, 'in', 'ft'],
  [180, 'degF', 'degC'],
  [750, 'mL', 'cup'],
  [62, 'lb', 'oz'],
  [100, 'degC', 'degF'],
];

const math = create(mathAll);
const units = configureMeasurements(measures.default ?? measures);
const called = (library, [value, from, to]) => [value, UNITS[from][library], UNITS[to][library]];
/** The conversions in turn, one a call. */
function inTurn(library, ask) {
  const list = ASKED.map((asked) => (library === 'own' ? asked : called(library, asked))).map(([value, from, to]) => ({
    value,
    from,
    to,
    text: `${value} ${from}`,
  }));
  let next = 0;
  return () => {
    next = (next + 1) % list.length;
    return ask(list[next]);
  };
}

const TEXTS = [
  ['stillroom', 'own', ({ text, to }) => stillroom.convert(text, to).value],
  ['mathjs', 'math', ({ text, to }) => math.unit(text).toNumber(to)],
  ['js-quantities', 'qty', ({ text, to }) => new Qty(text).to(to).scalar],
  ['unitmath', 'unitmath', ({ text, to }) => unitmath(text).to(to).value],
];
const AMOUNTS = [
  ['stillroom', 'own', ({ value, from, to }) => stillroom.convert({ value, unit: from }, to).value],
  ['mathjs', 'math', ({ value, from, to }) => math.unit(value, from).toNumber(to)],
  ['js-quantities', 'qty', ({ value, from, to }) => new Qty(value, from).to(to).scalar],
  ['unitmath', 'unitmath', ({ value, from, to }) => unitmath(value, from).to(to).value],
  ['convert-units', 'units', ({ value, from, to }) => units(value).from(from).to(to)],
  ['convert', 'convert', ({ value, from, to }) => convert(value, from).to(to)],
];

function against(key, rivals, options) {
  const [own, ...others] = beside(
    rivals.map(([name, library, ask]) => ({ name, work: inTurn(library, ask) })),
    options,
  );
  for (const { name, ratio, wall, cpu } of others)
    tell(`${key} / ${name}`, `stillroom / ${name}`, { value: 1 / ratio, wall, cpu });
  tell('', 'stillroom itself', { value: 1, wall: own.wall, cpu: own.cpu });
}

export function conversions(options) {
  section(
    'Converting texts',
    `${ASKED.length} texts such as "1.5 cup" and "180 degF" in turn: the time of stillroom by that of each library.`,
  );
  against('text', TEXTS, options);
  const cups = [
    ['stillroom', stillroom.convert('1 cup', 'tsp').value],
    ['mathjs', math.unit('1 cup').toNumber('teaspoon')],
    ['js-quantities', new Qty('1 cu').to('tsp').scalar],
    ['unitmath', unitmath('1 cup').to('tsp').value],
    ['convert-units', units(1).from('cup').to('tsp')],
    ['convert', convert(1, 'cups').to('teaspoons')],
  ];
  note(`A cup in teaspoons is 48: ${cups.map(([name, value]) => `${name} ${value}`).join(', ')}.`);
  section(
    'Converting amounts',
    'The same conversions of `{ value, unit }`, where no text is read: the time of stillroom by that of each library.',
  );
  against('amount', AMOUNTS, options);
}
