import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { form, formOfBoth } from '../foods/fields';
import { formName } from '../foods/tables';
import { choice, fields, flag, optional, readInput, share, time } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, behind, type Caution, derived, measured as measuredBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf, practiceBasis } from '../sources/table';
import { headspace } from '../words/headspace';
import { jar, type ReadJar } from '../words/jar';
import { type JarMouth, mouth } from '../words/mouth';
import { jarCaution } from './cautions';
import { resolveJar } from './describeJar';
import { headspaceMilliliters } from './fillJar';
import { type AskedFood, foodOrForm, headspaceFor, type PublishedHeadspace } from './headspaceFor';
import { type Handling, handleProcessed } from './liquidLost';
import { practiceRows, rowOf, vacuumFactRows } from './tables';

const schema = /* @__PURE__ */ fields({
  /** A food by any name it goes by: `peach`, `applesauce`, `strawberry jam`, `pickles`; or a form such as `juice`. */
  food: optional(foodOrForm()),
  /** Its form: `halves`, `sauce`, `juice`. */
  form: optional(form()),
  /** The headspace in the jar, zero or more. */
  measured: headspace({ min: { value: 0, unit: 'in' } }),
  /** The headspace printed with your tested recipe; it overrides the general rule for the food. */
  recipeHeadspace: optional(headspace()),
  /** The jar (see `fillJar`), to learn how much to take out or to add before processing. */
  jar: optional(jar()),
  /** `regular` or `wide`, where the jar does not say. */
  mouth: optional(mouth()),
  /** `before processing` (the default) or `after processing`. */
  when: optional(choice('when it was measured', ['before processing', 'after processing'])),
  /** After processing: the share of the liquid that is gone, 0 to 1 or percent. */
  liquidLost: optional(share()),
  /** After processing: whether the jar has sealed. */
  hasSealed: optional(flag('whether the jar has sealed, by checkSeal')),
  /** After processing: time since the jar came out of the canner. */
  sinceProcessing: optional(time({ min: { value: 0, unit: 'h' } })),
});
export type CheckHeadspaceInput = z.input<typeof schema>;

export interface HeadspaceCheck {
  /** The figures are here. */
  readonly known: true;
  /** How the measured headspace compares with the printed one. */
  readonly verdict: 'right' | 'too little' | 'too much';
  /** The least headspace that is right, in the unit of `measured`. */
  readonly leastHeadspace: Quantity<'length'>;
  /** The most; the same as `leastHeadspace` where one figure is printed. */
  readonly mostHeadspace: Quantity<'length'>;
  /** What the verdict means. */
  readonly meaning: string;
  /** What to do now, first step first. */
  readonly next: readonly string[];
  /** What becomes of the jar; after processing. */
  readonly handling?: Handling;
  /** How much to take out to be right, in the unit of the jar; before processing, where a jar is given. */
  readonly takeOut?: Quantity<'volume'>;
  /** How much to add to be right, in the unit of the jar; before processing, where a jar is given. */
  readonly add?: Quantity<'volume'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const MEANING: Readonly<Record<HeadspaceCheck['verdict'], string>> = {
  right: 'The headspace is the published one.',
  'too little':
    'Food may boil out under the lid and keep it from sealing, the vacuum is weak and the process may not be enough.',
  'too much': 'The process may not drive all the air out: the food can darken and spoil and the seal be weak.',
};
const MEANING_AFTER: typeof MEANING = {
  right: 'Food and liquid are where you filled them.',
  'too little': 'The jar was filled too high, or its food swelled: food under the lid can keep it from sealing.',
  'too much': 'Liquid left the jar in the canner, or air left the food and it shrank.',
};
const NEXT_BEFORE: Readonly<Record<HeadspaceCheck['verdict'], readonly string[]>> = {
  right: [],
  'too little': ['Take some out before processing.'],
  'too much': ['Add food or liquid before processing.'],
};

/** The headspace that the tables, or the recipe, print; nothing where the tables print none. */
function printedFor(
  asked: AskedFood | undefined,
  form: string | undefined,
  printed: Quantity<'length'> | undefined,
): PublishedHeadspace | undefined {
  if (printed === undefined) return headspaceFor(asked?.id, form);
  const inches = valueIn(printed, 'in');
  return { least: inches, most: inches, basis: [measuredBasis('leastHeadspace', 'headspace printed with the recipe')] };
}

/** The answer for a food that the tables print no headspace for. */
function notPrinted(asked: AskedFood, form: string | undefined): NotKnown {
  const named = [asked.name, form === undefined ? undefined : formName(form)].filter(Boolean).join(', ');
  return notKnown({
    code: 'not in these tables',
    text: `These tables print no headspace for ${named}.`,
    instead: [
      {
        text: 'Use the headspace printed with your tested recipe, and pass it as `recipeHeadspace`; testedProcess has it for the recipes of these tables.',
        ...(asked.id === undefined ? {} : { food: asked.name }),
        ...(form === undefined ? {} : { form: formName(form) }),
      },
    ],
    basis: [derived('reason', 'what the table of headspaces holds')],
    cautions: [caution('tested-only')],
  });
}

/** What to take out or to add for a headspace that is this far off, in inches. */
function adjustment(verdict: HeadspaceCheck['verdict'], off: number, jar: ReadJar, mouth: JarMouth | undefined) {
  const { opening, capacity, basis } = resolveJar(jar, mouth);
  const volume = quantityIn<'volume'>(headspaceMilliliters(opening, { value: off, unit: 'in' }), 'mL', capacity.unit);
  return verdict === 'too little'
    ? { amount: { takeOut: volume }, basis: behind('takeOut', basis) }
    : { amount: { add: volume }, basis: behind('add', basis) };
}

/** Refuses what is known only after processing. */
function refuseBefore(input: CheckHeadspaceInput): void {
  for (const field of ['liquidLost', 'hasSealed', 'sinceProcessing'] as const) {
    if (input[field] !== undefined) fail('CONTRADICTION', field, input[field], "when: 'after processing' with it");
  }
}

/**
 * Whether the headspace measured in a jar is the published one for its food, and what to do about it. Before
 * processing, take some out or add some; after it, never open the jar to fill it up.
 *
 * Headspace runs from the rim down to the food or liquid. The figures are in data/jars/headspace.json, and the foods
 * that each serves in data/jars/headspace-scopes.json: a food is there only where every tested recipe for it agrees. A
 * reading within 1/16 in counts as the figure (common practice: half a mark of a kitchen ruler).
 *
 * After processing, a sealed jar that lost less than half its liquid is stored and used first. Where half or more is
 * gone, break the seal, refrigerate it and eat it within 2 to 3 days; found later than a day, throw it out untasted.
 *
 * Source: USDA Complete Guide to Home Canning, Guide 1; Penn State, Clemson, Illinois, Michigan State and
 * Nebraska Extension. What too little and too much do: U.S. FDA guide to inspections, headspace section. Liquid lost:
 * Nebraska Extension quoting the National Center for Home Food Preservation; Michigan State Extension (never refill).
 *
 * @returns the verdict, the figures in the unit of `measured`, what it means and what to do next; after processing
 *   `handling` says what becomes of the jar; `known: false` for a food that these tables print no headspace for
 * @throws StillroomError UNKNOWN_NAME for a name that is no food, MISSING when neither food nor recipeHeadspace is given,
 *   CONTRADICTION for liquid lost or a seal before processing
 *
 * @example
 * ```ts
 * import { checkHeadspace } from 'stillroom/jars';
 *
 * checkHeadspace({ food: 'jam', measured: '1/4 in' }).verdict; // => 'right'
 * checkHeadspace({ food: 'peach', form: 'halves', measured: '1 in' }).verdict; // => 'too much'
 * checkHeadspace({ food: 'poultry', measured: '2.5 cm' }).verdict; // => 'too little'
 * const pint = checkHeadspace({ food: 'fruit', measured: '1 in', jar: 'pint' });
 * pint.add.value; // ≈ 1.23
 * const processed = { food: 'peach', measured: '3 in', when: 'after processing', hasSealed: true } as const;
 * checkHeadspace({ ...processed, liquidLost: '30 %' }).handling; // => 'use first'
 * checkHeadspace({ ...processed, liquidLost: '60 %' }).handling; // => 'refrigerate'
 * ```
 */
export function checkHeadspace(input: CheckHeadspaceInput): HeadspaceCheck | NotKnown {
  const given = readInput(schema, input);
  const { food, measured, recipeHeadspace: printed, jar, mouth, when = 'before processing' } = given;
  const { liquidLost, hasSealed, sinceProcessing } = given;
  const after = when === 'after processing';
  if (!after) refuseBefore(input);
  if (food === undefined && given.form !== undefined) fail('MISSING', 'food', food, 'the food of that form');
  if (food === undefined && printed === undefined) {
    fail('MISSING', 'food', food, 'a food, or the headspace printed with your recipe');
  }
  const form = food === undefined ? undefined : formOfBoth(food, given.form);
  const published = printedFor(food, form, printed);
  if (published === undefined) return answer(notPrinted(food as AskedFood, form));
  const depth = valueIn(measured, 'in');
  const reading = rowOf(practiceRows, 'headspace-reading').value;
  const verdict =
    depth < published.least - reading ? 'too little' : depth > published.most + reading ? 'too much' : 'right';
  const off = verdict === 'too little' ? published.least - depth : depth - published.most;
  const adjusted = after || jar === undefined || verdict === 'right' ? undefined : adjustment(verdict, off, jar, mouth);
  const processed = after
    ? handleProcessed({
        low: verdict === 'too much',
        liquidLost,
        sealed: hasSealed,
        hours: sinceProcessing === undefined ? undefined : valueIn(sinceProcessing, 'h'),
      })
    : undefined;
  return answer({
    known: true,
    verdict,
    leastHeadspace: quantityIn(published.least, 'in', measured.unit),
    mostHeadspace: quantityIn(published.most, 'in', measured.unit),
    meaning: (after ? MEANING_AFTER : MEANING)[verdict],
    next: processed?.next ?? NEXT_BEFORE[verdict],
    ...(processed === undefined ? {} : { handling: processed.handling }),
    ...adjusted?.amount,
    basis: [
      ...published.basis,
      practiceBasis('verdict', 'a reading within 1/16 in counts as the figure'),
      ...(verdict === 'right'
        ? []
        : [
            basisOf(
              rowOf(vacuumFactRows, 'too-little-or-much'),
              'meaning',
              'what too little and too much headspace do',
            ),
          ]),
      ...(adjusted?.basis ?? []),
      ...(processed?.basis ?? []),
    ],
    cautions: [
      caution('tested-only'),
      ...(printed === undefined ? [jarCaution('recipe-headspace-first')] : []),
      ...(adjusted === undefined ? [] : [jarCaution('straight-neck')]),
      ...(processed === undefined ? [] : [jarCaution('no-reading-proves-a-seal')]),
      ...(processed?.handling === 'discard' ? [jarCaution('liquid-lost-late')] : []),
    ],
  });
}
