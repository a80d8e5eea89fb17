import * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Exact } from '../common/exact';
import { findNamed, lookUp } from '../common/names';
import { fail, within } from '../errors/StillroomError';
import { count, fields, optional, readInput, reading } from '../quantity/fields';
import { exactIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { basisOf, practiceBasis } from '../sources/table';
import { capacityOf, jar as jarWord, type ReadJar, readJar } from '../words/jar';
import { methodRows } from '../words/method';
import { jarCaution } from './cautions';
import { MOST_JARS } from './jarsFor';
import { type CannerRow, cannerRows, leastLoadRows, loadRows } from './tables';

/** A kind of canner by name, or how many jars of each size yours holds: `{ pint: 8, quart: 7 }`. */
export type CannerInput = string | { readonly [jarSize: string]: number };

const CANNER_NAMES = `kind of canner (${cannerRows.map(({ name }) => name).join(', ')})`;

const schema = /* @__PURE__ */ fields({
  /** Filled jars, 1 to 5,000. */
  jars: count('how many filled jars', 1, MOST_JARS),
  /** Their size. */
  jar: jarWord(),
  /**
   * `boiling-water` (the default), `steam`, `pressure`, `small pressure`, `large pressure`, or what
   * yours holds: `{ pint: 8, quart: 7 }`.
   */
  canner: optional(
    reading<CannerInput, CannerInput>((given) => {
      if (typeof given === 'string') return given;
      if (typeof given === 'object' && given !== null && !Array.isArray(given)) return given as CannerInput;
      fail('WRONG_TYPE', '', given, 'a canner such as boiling-water, or { pint: 8, quart: 7 }');
    }),
  ),
});
export type LoadsForInput = z.input<typeof schema>;

const ownLoads = /* @__PURE__ */ z.record(z.string(), count('how many jars of that size one load holds', 1, MOST_JARS));

export interface LoadsFor {
  /** Loads to run, the last one included. */
  readonly loads: number;
  /** Jars in a full load. */
  readonly perLoad: number;
  /** Jars in the last load. */
  readonly lastLoad: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

interface Load {
  /** The jar that the figure is for. */
  readonly size: string;
  readonly held: Quantity<'volume'>;
  readonly jars: number;
  readonly basis: readonly Basis[];
}

/** The kind of a canner by any name: one that says its method, or its size. */
function kindOf(canner: string): CannerRow {
  const [said] = findNamed(canner, methodRows);
  const known = said && cannerRows.find(({ methods }) => methods.includes(said.name));
  return known ?? lookUp(canner, cannerRows, 'canner', CANNER_NAMES);
}

function ownCanner(canner: object): Load[] {
  const held = within('canner', () => readInput(ownLoads, canner));
  return Object.entries(held).map(([size, jars]) => ({
    ...figureFor(readJar(size, `canner.${size}`)),
    jars,
    basis: [measured('perLoad', `${size} jars in a full load`)],
  }));
}

/** The printed loads of a kind of canner: the largest printed figure of each size, with every copy that prints it. */
function printedLoads(kind: CannerRow): Load[] {
  const rows = loadRows.filter(({ canner }) => canner === kind.load);
  return [...new Set(rows.map(({ jar }) => jar))].map((size) => {
    const of = rows.filter(({ jar, obtained }) => jar === size && obtained !== 'memory');
    const jars = Math.max(...of.map(({ most }) => most));
    return {
      size,
      held: capacityOf(size),
      jars,
      basis: of.map((row) => basisOf(row, 'perLoad', `${size} jars in a full load`)),
    };
  });
}

const figureFor = ({ name, volume }: ReadJar) => ({ size: name, held: volume });
const litres = (held: Quantity<'volume'>): Exact => exactIn(held, 'L');

/** The figure for this jar, or else for the next larger one that has one. */
function nextLarger<T extends { readonly held: Quantity<'volume'> }>(
  figures: readonly T[],
  jar: ReadJar,
): T | undefined {
  return figures
    .filter(({ held }) => litres(held).gte(litres(jar.volume)))
    .sort((one, other) => litres(one.held).cmp(litres(other.held)))[0];
}

/**
 * How many canner loads a number of jars takes, and how many jars are in the last one.
 *
 * Where you name no canner, the usual load of the US guides counts: 7 quarts or 9 pints. No load is printed for smaller jars;
 * they are counted as the next larger size, which never promises more than fit.
 *
 * Source: USDA Complete Guide to Home Canning (AIB 539), quantity lines of Guides 2 to 5; Michigan State Extension.
 *
 * @throws StillroomError MISSING (`canner`) where neither your canner nor a printed load names a jar so large
 *
 * @example
 * ```ts
 * import { loadsFor } from 'stillroom/jars';
 *
 * const { loads, perLoad, lastLoad } = loadsFor({ jars: 20, jar: 'pint' });
 * [loads, perLoad, lastLoad]; // => [3, 9, 2]
 * loadsFor({ jars: 20, jar: 'pint', canner: { pint: 7 } }).lastLoad; // => 6
 * loadsFor({ jars: 3, jar: 'half-gallon' }); // throws StillroomError MISSING
 * ```
 */
export function loadsFor(input: LoadsForInput): LoadsFor {
  const { jars, jar, canner = 'boiling-water' } = readInput(schema, input);
  const kind = typeof canner === 'string' ? kindOf(canner) : undefined;
  const known = kind === undefined ? ownCanner(canner as object) : printedLoads(kind);
  const load = nextLarger(known, jar);
  if (load === undefined) {
    fail('MISSING', 'canner', input.canner, `how many ${jar.name} jars your canner holds: { "${jar.name}": 4 }`);
  }
  const loads = Math.ceil(jars / load.jars);
  const lastLoad = jars - (loads - 1) * load.jars;
  const least = nextLarger(
    leastLoadRows.map((row) => ({ held: capacityOf(row.jar), row })),
    jar,
  )?.row;
  const tooSmall = kind?.pressure === true && least !== undefined && lastLoad < least.least;
  return answer({
    loads,
    perLoad: load.jars,
    lastLoad,
    basis: [
      ...load.basis,
      ...(tooSmall ? [basisOf(least, 'lastLoad', `least ${least.jar} jars in a pressure load`)] : []),
      ...(load.size === jar.name
        ? []
        : [practiceBasis('perLoad', `${jar.name} jars counted as ${load.size} jars in a load`)]),
    ],
    cautions: [
      ...(kind === undefined ? [] : [jarCaution('rack-differs')]),
      ...(load.size === jar.name ? [] : [jarCaution('load-not-printed')]),
      ...(tooSmall ? [jarCaution('small-pressure-load')] : []),
      ...(jar.name === 'half-gallon' ? [jarCaution('half-gallon-juice-only')] : []),
    ],
  });
}
