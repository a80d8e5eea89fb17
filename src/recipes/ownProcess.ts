import type * as z from 'zod/mini';
import { acidForJars } from '../acid/acidForJars';
import { phOf } from '../acid/phOf';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail, StillroomError } from '../errors/StillroomError';
import { type FoundFood, food, form } from '../foods/fields';
import { formName } from '../foods/tables';
import { processCaution, usualCautions } from '../process/cautions';
import { notCannedRow } from '../process/decide';
import { citationField, elevationMinutes } from '../process/elevationMinutes';
import { knowledgeOf, refusedForm } from '../process/food';
import { gaugePressure } from '../process/gaugePressure';
import { fields, kitchenElevation, list, name, number, optional, readInput, volume } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { type NotTested, notTested } from '../sources/no';
import { headspace } from '../words/headspace';
import { capacityOf, jar } from '../words/jar';
import { type CanningMethod, method } from '../words/method';
import { type AnyPack, pack } from '../words/pack';
import { recipeCaution } from './cautions';
import { type ByTables, ofTables, testedInstead } from './ownByTables';

/** What a book prints of a recipe that is canned, its foods and the elevation of the kitchen apart. */
export const ownFields = () => ({
  /** What your book calls the recipe. */
  name: name('what your book calls the recipe'),
  /** Where it is printed: the title of the book and a year, edition or page. */
  citation: citationField(),
  /** The form of what is canned, such as `sauce`. */
  form: optional(form()),
  /** `hot` or `raw`. */
  pack: optional(pack()),
  /** The jar. */
  jar: jar(),
  /** The canner. */
  method: method(),
  /** The minutes that your book prints, above 0 and up to 600. */
  minutes: number('the minutes that your book prints, above 0 and up to 600', { above: 0, max: 600 }),
  /** The elevation up to which the book's minutes hold; 1,000 ft when left out. */
  baseElevation: optional(kitchenElevation()),
  /** The headspace that your book prints. */
  headspace: headspace(),
  /** What goes into each jar to make it acid. */
  acid: optional(
    fields({
      /** Bottled lemon juice in each jar. */
      bottledLemonJuice: optional(volume()),
      /** Citric acid in each jar. */
      citricAcid: optional(volume()),
    }),
  ),
});

const schema = /* @__PURE__ */ fields({
  ...ownFields(),
  /** Everything that goes into the jars, spices apart: 1 to 30 foods. */
  foods: list('what goes into the jars', food(), 1, 30),
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  elevation: kitchenElevation(),
});
export type OwnProcessInput = Given<z.input<typeof schema>>;
type Asked = z.output<typeof schema>;

/** Acid that goes into each jar. */
export interface OwnAcid {
  /** Bottled lemon juice in each jar. */
  readonly bottledLemonJuice?: Quantity<'volume'>;
  /** Citric acid in each jar. */
  readonly citricAcid?: Quantity<'volume'>;
}

/** The tested process of your own book, at your elevation. */
export interface OwnProcess {
  /** Your book's figures are served as yours. */
  readonly tested: true;
  /** The figures are your book's and not of these tables. */
  readonly ownBook: true;
  /** What your book calls the recipe. */
  readonly name: string;
  /** Where it is printed. */
  readonly citation: string;
  /** Trade names of what goes into the jars. */
  readonly foods: readonly string[];
  /** The form, where you named one. */
  readonly form?: string;
  /** `hot`, `raw`, or `not stated`. */
  readonly pack: AnyPack;
  /** The jar. */
  readonly jar: string;
  /** The canner. */
  readonly method: CanningMethod;
  /** Process time here, minutes: your book's with the addition for elevation, or the tables' where theirs is longer. */
  readonly minutes: number;
  /** Gauge pressure to hold, of the pressure methods. */
  readonly pressure?: Quantity<'pressure'>;
  /** Empty space to leave below the lid. */
  readonly headspace: Quantity<'length'>;
  /** What goes into each jar to make it acid, as you gave it. */
  readonly acid?: OwnAcid;
  /** What your book gives here by itself, minutes. */
  readonly byYourBook: number;
  /** What these tables hold for the same food, form, pack and jar: the longest, where you left out form or pack. */
  readonly byTables?: ByTables;
  /** Whose minutes are served. */
  readonly whoseMinutes: 'your book' | 'these tables';
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const IN_WATER: readonly CanningMethod[] = ['boiling-water', 'atmospheric-steam'];
/** The largest jar that these tables print a process for in food of any kind. */
const LARGEST = 'quart';
const NEAR = 1.001;

interface Refusal {
  readonly code: string;
  readonly text: string;
  readonly instead: string;
  /** The highest pH of the food. */
  readonly pH?: number;
}

/** Whether the acid that goes into each jar is what the tables ask of this food. */
function acidified(of: FoundFood, { acid, jar: { name: size } }: Asked): boolean {
  if (acid === undefined) return false;
  try {
    const needed = acidForJars({ food: of.name, jar: size, jars: 1 });
    if ('tested' in needed) return false;
    const { bottledLemonJuice, citricAcid } = needed.perJar;
    const enough = (own: Quantity<'volume'> | undefined, least: Quantity<'volume'> | undefined): boolean =>
      own !== undefined && least !== undefined && valueIn(own, 'mL') >= valueIn(least, 'mL') / NEAR;
    return enough(acid.bottledLemonJuice, bottledLemonJuice) || enough(acid.citricAcid, citricAcid);
  } catch (error) {
    // a jar that no acid is printed for
    if (error instanceof StillroomError) return false;
    throw error;
  }
}

/** Why a food makes the recipe unsafe in boiling water; none where it is acid. */
function tooLittleAcid(of: FoundFood, asked: Asked): Refusal | undefined {
  const { form: asForm = of.form } = asked.foods.length === 1 ? { form: asked.form ?? of.form } : of;
  const found = phOf({ food: of.name, ...(asForm === undefined ? {} : { form: formName(asForm) }) });
  const known = 'acidity' in found ? found : phOf({ food: of.name });
  if (acidified(of, asked)) return undefined;
  if (!('acidity' in known))
    return {
      code: 'acidity not known',
      text: `these tables hold no pH of ${of.name}, so they cannot tell whether boiling water is enough for it`,
      instead: 'Use a recipe that these tables hold (waysToKeep), or freeze it.',
    };
  if (known.acidity === 'acid') return undefined;
  const { low, high } = known.pH;
  // a food that has a tested process in water counts as acid there, whatever one list says of it
  const borderline = known.crosses && testedInstead(asked).length > 0;
  const measured = borderline ? `may be low in acid (pH ${low} to ${high})` : `is low in acid (pH up to ${high})`;
  return {
    code: 'low in acid',
    pH: high,
    text: `${of.name} ${measured}: boiling water does not destroy the spores of botulism in low-acid food, whatever a book prints`,
    instead:
      'Use a pressure process of these tables (testedProcess), a tested recipe that adds the acid (waysToKeep), or freeze it.',
  };
}

/** What of these tables' rules the recipe contradicts. */
function contradiction(asked: Asked): Refusal | undefined {
  for (const of of asked.foods) {
    const known = knowledgeOf(of.id);
    const [barred] = refusedForm(known, asked.form === undefined ? undefined : formName(asked.form)).filter(
      ({ quality, pack: only, jar: size }) => quality !== true && only === undefined && size === undefined,
    );
    if (barred !== undefined) return { code: 'not canned', text: notCannedRow(barred).text, instead: barred.instead };
  }
  if (valueIn(asked.jar.volume, 'mL') > valueIn(capacityOf(LARGEST), 'mL') * NEAR)
    return {
      code: 'jar too large',
      text: `the jar is larger than a ${LARGEST}: heat reaches its middle too late, and these tables serve larger ones for juice alone`,
      instead: `Use jars of a ${LARGEST} or less.`,
    };
  if (!IN_WATER.includes(asked.method)) return undefined;
  const found = asked.foods.map((of) => tooLittleAcid(of, asked)).filter((each) => each !== undefined);
  return found.sort(({ pH: one = 0 }, { pH: other = 0 }) => other - one)[0];
}

const refused = ({ code, text, instead }: Refusal, asked: Asked): NotTested =>
  notTested({
    code,
    text,
    instead: [...testedInstead(asked), { text: instead }],
    basis: [derived('reason', 'the safety rules of these tables')],
    cautions: [processCaution('low-acid-botulism'), ...usualCautions()],
  });

const given = ({ bottledLemonJuice, citricAcid }: NonNullable<Asked['acid']>): OwnAcid => ({
  ...(bottledLemonJuice === undefined ? {} : { bottledLemonJuice }),
  ...(citricAcid === undefined ? {} : { citricAcid }),
});

interface Here {
  readonly minutes: number;
  readonly pressure?: Quantity<'pressure'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The book's minutes here: more of them in water, more pressure in a pressure canner. */
function here({ method: canner, minutes, elevation, citation, foods }: Asked): Here | NotTested {
  if (canner === 'dial-gauge' || canner === 'weighted-gauge') {
    const acid = foods.every((of) => {
      const found = phOf({ food: of.name });
      return 'acidity' in found && found.acidity === 'acid';
    });
    const found = gaugePressure({ method: canner, acidity: acid ? 'acid' : 'low-acid', elevation });
    if ('tested' in found) return found;
    return {
      minutes,
      pressure: found.pressure,
      basis: [{ of: 'minutes', kind: 'measured', locator: citation, note: 'your book' }, ...found.basis],
      cautions: found.cautions,
    };
  }
  return elevationMinutes({ baseMinutes: minutes, rule: 'bands', elevation, citation });
}

/**
 * A canning recipe of your own book at your elevation, marked as yours on every page that shows it.
 *
 * The book's minutes are taken as tested by those who printed it, and adjusted by the published rules: minutes are
 * added in boiling water and steam (`elevationMinutes`, rule `bands`), pressure in a pressure canner
 * (`gaugePressure`). It is refused where it contradicts the safety rules of these tables: food that is low in acid, or
 * whose pH they do not hold, in boiling water; food that is not canned; a jar larger than a quart. Where the tables
 * hold the same food, form, pack and jar with a longer time, theirs is served and both are shown. Leave out the form or
 * the pack, and theirs is the longest of all that may be meant.
 *
 * @returns `{ tested: true, ownBook: true, minutes, whoseMinutes, byYourBook, byTables?, ... }`, or `{ tested: false, ... }`
 * @throws StillroomError MISSING or UNKNOWN_NAME for a citation that cannot be followed up, OUT_OF_RANGE for a base
 *   elevation above 1,000 ft, whose additions the rules do not know
 *
 * Source: USDA Complete Guide to Home Canning, Guide 1, for the rules; the figures are those of the book you name.
 *
 * @example
 * ```ts
 * import { ownProcess } from 'stillroom/recipes';
 *
 * const mine = ownProcess({
 *   name: 'plum sauce', citation: 'Our county cookbook, 1998, page 41', foods: ['plum'], form: 'sauce',
 *   jar: 'pint', method: 'boiling-water', minutes: 10, headspace: '1/2 in', elevation: '4200 ft',
 * });
 * mine.tested && mine.minutes; // => 20
 * ```
 */
export function ownProcess(input: OwnProcessInput): OwnProcess | NotTested {
  const asked = readInput(schema, input);
  const { baseElevation } = asked;
  if (baseElevation !== undefined && valueIn(baseElevation, 'ft') > 1000 * NEAR)
    fail(
      'OUT_OF_RANGE',
      'baseElevation',
      baseElevation.value,
      'minutes that hold up to 1,000 ft, where the rules begin',
    );
  const against = contradiction(asked);
  if (against !== undefined) return answer(refused(against, asked));
  const own = here(asked);
  if ('tested' in own) return answer(own);
  const tables = ofTables(asked);
  const longer = tables !== undefined && tables.minutes > own.minutes;
  return answer({
    tested: true,
    ownBook: true,
    name: asked.name,
    citation: asked.citation,
    foods: asked.foods.map((each) => each.name),
    ...(asked.form === undefined ? {} : { form: formName(asked.form) }),
    pack: asked.pack ?? 'not stated',
    jar: asked.jar.name,
    method: asked.method,
    minutes: longer ? tables.minutes : own.minutes,
    ...(own.pressure === undefined ? {} : { pressure: own.pressure }),
    headspace: asked.headspace,
    ...(asked.acid === undefined ? {} : { acid: given(asked.acid) }),
    byYourBook: own.minutes,
    ...(tables === undefined ? {} : { byTables: tables }),
    whoseMinutes: longer ? 'these tables' : 'your book',
    basis: [
      ...own.basis.map((line) => (line.of === 'added' || line.of === 'byBands' ? { ...line, of: 'minutes' } : line)),
      { of: 'headspace', kind: 'measured', locator: asked.citation, note: 'your book' },
      ...(tables === undefined ? [] : [derived('byTables', 'testedProcess')]),
    ],
    cautions: [recipeCaution('your-books-figures'), ...own.cautions, ...usualCautions()],
  });
}
