import * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { fail } from '../errors/StillroomError';
import { choice, fields, kitchenElevation, name, optional, pressure, readInput } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { toDecimalIn } from '../quantity/scale';
import type { LengthInput, PressureInput, Quantity, Range } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions, type Refusal } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';
import { acidCaution, acidOf, acidRowOf, type ProcessAcid } from './acid';
import { bandIndex, bandsOf, bandText } from './bands';
import { ruleBasis, ruleFigures } from './canningRules';
import { processCaution, usualCautions } from './cautions';
import { choiceText, type FormChoice, type KnownFood, readFood, readForm, refusedForm, rowsOfChoice } from './food';
import { LISTED_JARS, listedSize, type ProcessJarInput, type ReadJar, readJar } from './jar';
import { type RefusalDetails, refusal } from './refusal';
import {
  type CanningMethod,
  type ListedJar,
  type NotRecommendedRow,
  type Pack,
  type PrintedMethod,
  type ProcessRow,
  rowsOf,
} from './tables';

export const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] as const;

/** A word for a fixed choice, with spaces or hyphens and in any case: `Boiling water`. */
export const word = (given: unknown): unknown =>
  typeof given === 'string' && given.length < 100
    ? given
        .trim()
        .toLowerCase()
        .replace(/[\s_]+/g, '-')
        .replace(/-(?:canner|pack)$/, '')
    : given;

const schema = /* @__PURE__ */ fields({
  food: name('the name of a food, such as "peach"'),
  form: optional(name('a form, such as "halves"')),
  pack: optional(choice('the pack', ['hot', 'raw', 'not-stated'])),
  jar: z.unknown(),
  method: choice('the canner', METHODS),
  elevation: kitchenElevation(),
  alternative: optional(choice('which of the printed lines', ['a', 'b', 'c'])),
  pressure: optional(pressure()),
});

export interface TestedProcessInput {
  /** Trade name or synonym, singular or plural, with or without its form: `peach`, `green beans`, `applesauce`. */
  readonly food: string;
  /** Needed where the food is tested in several: `halves`, `sauce`, `whole kernel`. */
  readonly form?: string | undefined;
  /** Needed where both are tested. */
  readonly pack?: Pack | 'not stated' | undefined;
  readonly jar: ProcessJarInput;
  readonly method: CanningMethod;
  readonly elevation: LengthInput;
  /** Which of several printed lines to follow; the first one that holds when left out. */
  readonly alternative?: 'a' | 'b' | 'c' | undefined;
  /** Or the line of this gauge pressure. */
  readonly pressure?: PressureInput | undefined;
}

/** One printed line: its minutes and its pressure belong together. */
export interface ProcessLine {
  readonly alternative: string;
  readonly minutes: number;
  readonly pressure?: Quantity<'pressure'>;
  readonly sterilizeJars: boolean;
}

/** A published process at an elevation. */
export interface TestedProcess {
  readonly tested: true;
  readonly food: string;
  readonly form: string;
  readonly pack: Pack | 'not stated';
  readonly jar: string;
  readonly method: CanningMethod;
  /** Process time: from the full boil, or from the moment the pressure is reached. */
  readonly minutes: number;
  /** Gauge pressure to hold, of the pressure methods. */
  readonly pressure?: Quantity<'pressure'>;
  /** Steam temperature to hold, of an atmospheric steam canner. */
  readonly steamTemperature?: Quantity<'temperature'>;
  readonly headspace: Quantity<'length'>;
  /** The acid that belongs to the process. */
  readonly acid?: ProcessAcid;
  /** Which printed line this is, where there are several, and all that hold here. */
  readonly alternative?: string;
  readonly alternatives?: readonly ProcessLine[];
  /** Whether the empty jars must be sterilized. */
  readonly sterilizeJars: boolean;
  /** What the recipe allows instead of boiling: a lower temperature for longer. */
  readonly pasteurize?: { readonly temperature: Range<Quantity<'temperature'>>; readonly minutes: number };
  /** What the caller left open and the tables leave only one answer to. */
  readonly assumed?: readonly string[];
  /** What each copy prints for this place, where copies disagree. */
  readonly printed?: readonly { readonly minutes?: number; readonly pressure?: number; readonly source?: string }[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Why a cell of a table is not served. */
const REFUSED_CELLS: Readonly<Record<string, string>> = {
  'not-recommended': 'the source prints this line as not recommended at this elevation',
  recalled:
    'the figure for this elevation was recalled and not read in a copy; the printed figure still has to be read',
  'no-such-weight':
    'the one copy read prints 11 lb for this elevation, which no weight gives, so the figure cannot be relied on',
};
const RECALLED =
  'the figures of this process were recalled and not read in a copy; the printed ones still have to be read';

const sorted = <T extends string>(found: Iterable<T>, order: readonly T[]): T[] => {
  const set = new Set(found);
  return order.filter((value) => set.has(value));
};
const packOf = (row: ProcessRow): Pack | 'not stated' => row.pack ?? 'not stated';
const PACKS = ['hot', 'raw', 'not stated'] as const;

/** Whether a food and form is low in acid: it has pressure processes at 10 psi or more, and none in boiling water. */
export const isLowAcid = (rows: readonly ProcessRow[]): boolean =>
  rows.every((row) => row.method !== 'boiling-water' && (row.psi ?? []).every((psi) => psi === null || psi >= 10));

/** What is tested of a choice, in words: `halved or sliced: hot or raw; pint, quart; boiling-water, dial-gauge`. */
function testedText(choice: FormChoice): string {
  const rows = rowsOfChoice(choice).filter((row) => row.obtained !== 'memory');
  const packs = sorted(rows.map(packOf), PACKS).join(' or ');
  const jars = sorted(
    rows.flatMap((row) => row.jars),
    LISTED_JARS,
  ).join(', ');
  const methods = sorted(
    rows.map((row) => row.method),
    METHODS as readonly PrintedMethod[],
  ).join(', ');
  return `${choiceText(choice)} (${packs} pack; ${jars}; ${methods})`;
}

function insteadOf(food: KnownFood, among: readonly FormChoice[] = food.choices): string {
  const choices = among.filter((choice) => rowsOfChoice(choice).some((row) => row.obtained !== 'memory'));
  if (choices.length === 0) return 'freeze or dry it, or keep it refrigerated and use it soon';
  return `tested for ${food.entry.name}: ${choices.map((choice) => testedText(choice)).join('; ')}`;
}

function refuseNotCanned(row: NotRecommendedRow): Refusal {
  return refusal({
    reason: row.reason,
    instead: row.instead,
    basis: [basisOf(row, row.quality === true ? 'not recommended, for quality' : 'not recommended')],
    cautions: row.obtained === 'memory' ? [caution('from-memory')] : [],
  });
}

/** A row's figures in one elevation band, or why they are not served. */
interface Cell {
  readonly row: ProcessRow;
  readonly band: number;
  readonly minutes: number;
  readonly psi?: number;
  readonly refused?: string;
}

function cellOf(row: ProcessRow, band: number): Cell {
  const minutes = typeof row.minutes === 'number' ? row.minutes : (row.minutes[band] as number);
  const psi = row.psi?.[band];
  const why = row.refused?.[String(band)];
  const refused = row.obtained === 'memory' ? RECALLED : why === undefined ? undefined : REFUSED_CELLS[why];
  return {
    row,
    band,
    minutes,
    ...(typeof psi === 'number' ? { psi } : {}),
    ...(refused === undefined ? {} : { refused }),
  };
}

/** Jars are sterilized where the time at the lowest elevations is under 10 minutes, and never for pressure. */
function needsSterileJars(row: ProcessRow): boolean {
  const [base = 0] = typeof row.minutes === 'number' ? [Number.POSITIVE_INFINITY] : row.minutes;
  const { low } = ruleFigures('sterilize');
  return base < low;
}

const psiQuantity = (value: number): Quantity<'pressure'> => ({ value, unit: 'psi' });
/** Feet: where the published elevation charts stop (elevationRules, genericBands); the printed bands stay open. */
const HIGHEST_CHARTED = 10_000;
/** How near a wanted gauge pressure must be to a printed one, psi: the reading of a figure given in kPa. */
const SAME_PRESSURE = 0.05;

function lineOf({ row, minutes, psi }: Cell): ProcessLine {
  return {
    alternative: row.alternative ?? 'a',
    minutes,
    ...(psi === undefined ? {} : { pressure: psiQuantity(psi) }),
    sterilizeJars: needsSterileJars(row),
  };
}

type Asked = z.output<typeof schema>;

/** The one printed line to serve of those for this food, pack and jar; or why none is. */
function chooseCell(cells: readonly Cell[], asked: Asked): Cell | RefusalDetails {
  const described = cells.map((cell) => {
    const { alternative, minutes, pressure } = lineOf(cell);
    return `${alternative}: ${minutes} min${pressure === undefined ? '' : ` at ${pressure.value} psi`}`;
  });
  const printed = `printed here: ${described.filter((_, index) => cells[index]?.refused === undefined).join('; ') || 'no line that can be served'}`;
  const wanted = cells.filter(
    (cell) =>
      (asked.alternative === undefined || (cell.row.alternative ?? 'a') === asked.alternative) &&
      (asked.pressure === undefined ||
        (cell.psi !== undefined && toDecimalIn(asked.pressure, 'psi').minus(cell.psi).abs().lte(SAME_PRESSURE))),
  );
  const served = wanted.find((cell) => cell.refused === undefined);
  if (served !== undefined) return served;
  const [first] = wanted;
  if (first === undefined) {
    const what =
      asked.pressure === undefined ? `line ${asked.alternative}` : formatQuantity(asked.pressure, { step: 0.01 });
    return { reason: `no line is printed for ${what} at this elevation`, instead: printed };
  }
  return {
    reason: first.refused as string,
    instead: cells.some((cell) => cell.refused === undefined)
      ? printed
      : `read the printed figure (${first.row.source}, ${first.row.locator}), use another method or jar, or freeze it`,
    basis: [basisOf(first.row, 'the line that is not served')],
  };
}

/** The steam canner borrows the boiling-water time, with a longest time of its own. */
function steamTemperatureFor(elevation: Quantity<'length'>): Quantity<'temperature'> {
  const { temperature } = boilingTemperature({ elevation });
  // upwards to a tenth of a degree
  const degrees = toDecimalIn(temperature, 'degF').times(10).ceil().div(10).toNumber();
  return { value: degrees, unit: 'degF' };
}

function answer(
  cell: Cell,
  cells: readonly Cell[],
  size: ListedJar,
  jar: ReadJar,
  asked: Asked,
  food: string,
  assumed: readonly string[],
): TestedProcess {
  const { row, band, minutes, psi } = cell;
  const bands = bandsOf(row);
  const where = bandText(bands.upToFt, band);
  const steam = asked.method === 'atmospheric-steam';
  const served = cells.filter((other) => other.refused === undefined);
  const acidRow = row.acid === undefined ? undefined : acidRowOf(row.acid, size);
  const acid = acidRow === undefined ? undefined : acidOf(acidRow);
  const sterile = needsSterileJars(row);
  const perBand = (figures: number | readonly number[]): number | undefined =>
    typeof figures === 'number' ? figures : figures[band];
  const printed = (row.printed ?? []).map((copy) => ({
    ...(copy.minutes === undefined ? {} : { minutes: perBand(copy.minutes) as number }),
    ...(copy.psi === undefined ? {} : { pressure: copy.psi[band] as number }),
    ...(copy.source === null ? {} : { source: copy.source }),
  }));
  const differ = new Set(printed.map(({ minutes, pressure }) => `${minutes}/${pressure}`)).size > 1;
  const pasteurize = ruleFigures('low-temperature-pasteurization');
  const basis = joinBasis(
    [
      basisOf(row, `minutes (${psi === undefined ? where : 'every elevation'})`),
      ...(psi === undefined ? [] : [basisOf(row, `gauge pressure (${where})`)]),
      basisOf(row, 'headspace'),
      basisOf(bands, 'elevation bands'),
    ],
    acidRow === undefined ? [] : [basisOf(acidRow, 'acid')],
    size === jar.name ? [] : [ruleBasis('next-larger', `a ${jar.name} jar takes the process of a ${size}`)],
    sterile ? [ruleBasis('sterilize', 'sterilized jars')] : [],
    steam
      ? [
          ruleBasis('steam-time', 'steam canner: the boiling-water time'),
          ...boilingTemperature({ elevation: asked.elevation }).basis,
        ]
      : [],
    row.pasteurize === true ? [ruleBasis('low-temperature-pasteurization', 'pasteurize')] : [],
  );
  const ids = [
    ...(toDecimalIn(asked.elevation, 'ft').gt(HIGHEST_CHARTED) ? ['very-high-kitchen'] : []),
    ...(psi === undefined
      ? [steam ? 'steam-canner' : 'restart-if-boil-stops']
      : ['vent-ten-minutes', 'restart-if-pressure-drops', 'wait-before-opening']),
    ...(steam ? ['barometer-moves-boiling'] : []),
    ...(isLowAcid(rowsOf(row.food, row.form)) ? ['low-acid-botulism'] : []),
    ...(psi !== undefined || row.acid === 'tomato' ? ['boil-before-tasting'] : []),
    ...(served.length > 1 ? ['one-printed-line'] : []),
    ...(sterile ? ['sterilize-jars'] : []),
    ...(differ ? ['copies-disagree'] : []),
    ...(row.cautions ?? []).filter((id) => id !== 'half-gallon-juice' || size === 'half-gallon'),
  ];
  return {
    tested: true,
    food,
    form: row.form,
    pack: packOf(row),
    jar: jar.name,
    method: asked.method,
    minutes,
    ...(psi === undefined ? {} : { pressure: psiQuantity(psi) }),
    ...(steam ? { steamTemperature: steamTemperatureFor(asked.elevation) } : {}),
    headspace: { value: row.headspace, unit: 'in' },
    ...(acid === undefined ? {} : { acid }),
    ...(row.alternative === undefined ? {} : { alternative: row.alternative, alternatives: served.map(lineOf) }),
    sterilizeJars: sterile,
    ...(row.pasteurize === true && !steam
      ? {
          pasteurize: {
            temperature: {
              low: { value: pasteurize.low, unit: 'degF' },
              likely: { value: pasteurize.low, unit: 'degF' },
              high: { value: pasteurize.high, unit: 'degF' },
            },
            minutes: pasteurize.minutes,
          },
        }
      : {}),
    ...(assumed.length === 0 ? {} : { assumed }),
    ...(differ ? { printed } : {}),
    basis,
    cautions: joinCautions(acid === undefined ? [] : [acidCaution(acid)], ids.map(processCaution), usualCautions(), [
      caution('hot-liquids-burn'),
    ]),
  };
}

/**
 * The published heat process for a food, form, pack and jar in a canner at an elevation, or a refusal with its
 * reason. Nothing is interpolated, shortened or taken over from a neighbouring food or jar.
 *
 * The minutes and the pressure are those printed for the elevation band the place lies in: 1,000 ft belongs to the
 * band that ends there, a fraction of a foot more to the next, and a place below sea level to the lowest. A jar
 * smaller than any the table lists takes the next larger listed size's process; a larger one is refused. Where two
 * printed copies disagree the longer time or higher pressure is served and `printed` holds both. A row known only
 * from memory is refused. Acid that the process requires is in `acid` and again in the cautions.
 *
 * Where a product has several printed lines (tomatoes under pressure, jam in sterilized jars or not) the first that
 * was read and holds at the elevation is given, and all of them in `alternatives`; `alternative` or `pressure` picks
 * another. `atmospheric-steam` is for food with a boiling-water process of 45 minutes or less, at the same minutes.
 *
 * Source: USDA Complete Guide to Home Canning and the copies named in each answer's basis; jar rule NCHFP and Kansas
 * State University; steam canner rules NCHFP and University of Wisconsin.
 *
 * @param input.food - trade name or synonym, with or without the form in it: `peach`, `green beans`, `applesauce`
 * @param input.form - needed where several forms are tested
 * @param input.pack - `hot` or `raw`; needed where both are tested
 * @param input.jar - `half-pint`, `pint`, `quart`, `half-gallon`, `12 oz` ..., or a nominal volume
 * @param input.method - `boiling-water`, `dial-gauge`, `weighted-gauge` or `atmospheric-steam`
 * @param input.elevation - above -500 m, to 5,000 m, in any unit of length
 * @param input.alternative - `a`, `b` or `c`: which of several printed lines
 * @param input.pressure - or the line of this gauge pressure
 * @returns `{ tested: true, minutes, pressure?, headspace, acid?, ... }` or `{ tested: false, reason, instead }`
 * @throws StillroomError UNKNOWN_NAME for a food in no table or a name that could be several, MISSING for a form or
 * pack that must be chosen, CONTRADICTION for a form that the food's name contradicts, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { testedProcess } from 'stillroom/process';
 *
 * const kitchen = { jar: 'quart', method: 'boiling-water', elevation: '4200 ft' } as const;
 * const peaches = testedProcess({ food: 'peaches', form: 'halves', pack: 'hot', ...kitchen });
 * peaches.tested && peaches.minutes; // => 35
 * const tomatoes = testedProcess({ food: 'crushed tomatoes', ...kitchen });
 * tomatoes.tested && tomatoes.acid?.bottledLemonJuice; // => { value: 2, unit: 'tbsp' }
 * testedProcess({ food: 'green beans', ...kitchen }).tested; // => false
 * testedProcess({ food: 'peaches', form: 'halves', ...kitchen }); // throws StillroomError MISSING
 * ```
 */
export function testedProcess(input: TestedProcessInput): TestedProcess | Refusal {
  const asked = readInput(schema, wordsOf(input));
  const jar = readJar(asked.jar);
  const reading = readFood(asked.food, asked.form);
  const { food } = reading;
  const text = asked.form ?? reading.form;
  const notCanned = refusedForm(food, text);
  const barred = notCanned.find((row) => row.pack === undefined && row.jar === undefined);
  if (barred !== undefined) return handOut(refuseNotCanned(barred));
  const plain = food.notCanned.find((row) => row.forms.includes('plain'));
  if (plain !== undefined && text === undefined) return handOut(refuseNotCanned(plain));

  const form = readForm(reading, asked.form);
  if ('unknown' in form) {
    if (plain !== undefined) return handOut(refuseNotCanned(plain));
    const reason = `no tested process is published for ${food.entry.name} as ${form.unknown || 'such'}`;
    return handOut(refusal({ reason, instead: insteadOf(food) }));
  }
  const { choice } = form;
  const assumed = form.only ? [`form: ${choice.form}, the only one tested`] : [];

  const printedMethod = asked.method === 'atmospheric-steam' ? 'boiling-water' : asked.method;
  const allRows = rowsOfChoice(choice);
  const rows = allRows.filter((row) => row.method === printedMethod);
  const instead = insteadOf(food, [choice]);
  if (rows.length === 0) {
    const lowAcid = isLowAcid(allRows);
    const reason =
      printedMethod === 'boiling-water' && lowAcid
        ? `${food.entry.name} (${choice.form}) is low in acid: boiling water does not destroy the spores of botulism in it, only a pressure process is tested`
        : `no ${asked.method} process is published for ${food.entry.name} (${choice.form})`;
    const cautions = lowAcid ? [processCaution('low-acid-botulism')] : [];
    return handOut(
      refusal({
        reason,
        instead,
        cautions,
        basis: allRows.slice(0, 1).map((row) => basisOf(row, 'methods that are tested')),
      }),
    );
  }

  const packs = sorted(rows.map(packOf), PACKS);
  const pack = asked.pack === 'not-stated' ? 'not stated' : (asked.pack ?? (packs.length === 1 ? packs[0] : undefined));
  if (pack === undefined) fail('MISSING', 'pack', input.pack, `one of the tested packs: ${packs.join(', ')}`);
  if (asked.pack === undefined && pack !== 'not stated') assumed.push(`pack: ${pack}, the only one tested`);
  const rowsOfPack = rows.filter((row) => packOf(row) === pack);
  const reasoned = [...notCanned, ...refusedForm(food, choice.form)];
  if (rowsOfPack.length === 0) {
    const known =
      reasoned.find((row) => row.pack === pack) ??
      food.notCanned.find((row) => row.pack === pack && row.forms.includes('any'));
    if (known !== undefined) return handOut(refuseNotCanned(known));
    return handOut(
      refusal({
        reason: `${food.entry.name} (${choice.form}) is not tested in a ${pack} pack for this canner`,
        instead,
      }),
    );
  }

  const sizes = sorted(
    rowsOfPack.flatMap((row) => row.jars),
    LISTED_JARS,
  );
  const size = listedSize(jar, sizes);
  if (size === undefined) {
    const known = food.notCanned.find((row) => row.jar === jar.name && refusedForm(food, choice.form).includes(row));
    if (known !== undefined) return handOut(refuseNotCanned(known));
    const largest = sizes[sizes.length - 1];
    return handOut(
      refusal({
        reason: `a ${jar.name} jar is larger than the largest tested for ${food.entry.name} (${choice.form}), a ${largest}`,
        instead: `use ${sizes.join(' or ')} jars`,
        basis: [ruleBasis('next-larger', 'no jar larger than the largest listed')],
      }),
    );
  }

  const lines = rowsOfPack.filter((row) => row.jars.includes(size));
  const [line] = lines as [ProcessRow, ...ProcessRow[]];
  const bands = bandsOf(line);
  const band = bandIndex(asked.elevation, bands.upToFt);
  if (band === undefined) {
    const end = bands.upToFt[bands.upToFt.length - 1] as number;
    return handOut(
      refusal({
        reason: `the ${asked.method} tables end at ${formatQuantity({ value: end, unit: 'ft' })}; no pressure is printed for a higher place`,
        instead: 'use a weighted-gauge canner, whose tables stay open above 1,000 ft, or freeze it',
        basis: [basisOf(bands, 'elevation bands')],
      }),
    );
  }
  const cells = lines.map((row) => cellOf(row, band));
  const cell = chooseCell(cells, asked);
  if ('reason' in cell) return handOut(refusal(cell));
  const longest = ruleFigures('steam-time').high;
  if (asked.method === 'atmospheric-steam' && cell.minutes > longest) {
    return handOut(
      refusal({
        reason: `the process takes ${cell.minutes} min, and a steam canner may run ${longest} min at most`,
        instead: 'use a boiling-water canner',
        basis: [ruleBasis('steam-time', 'longest time of a steam canner')],
        cautions: [processCaution('steam-canner')],
      }),
    );
  }
  return handOut(answer(cell, cells, size, jar, asked, food.entry.name, assumed));
}

/** Method, pack and line as their fixed words: `Boiling water` is `boiling-water`, `b of 2` is `b`. */
function wordsOf(input: TestedProcessInput): unknown {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) return input;
  const fixed: Record<string, unknown> = { ...input };
  for (const field of ['method', 'pack'] as const) if (field in input) fixed[field] = word(input[field]);
  if (typeof input.alternative === 'string') fixed.alternative = (input.alternative as string).replace(/ of [23]$/, '');
  return fixed;
}
