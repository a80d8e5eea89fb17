import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, name, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { mass } from '../words/mass';
import { assumed } from './assumptions';
import { publishedEnd } from './equations';
import { activityField, REFERENCE_TEMPERATURE, solutionTemperature } from './fields';
import { WATER } from './models';
import { norrishOf, pitzerOf, type Solute, solubilityOf, soluteNamed } from './solutes';

const schema = fields({
  /** Mass of the water. */
  water: mass(),
  /** Name of the solute: `sucrose`, `salt`, `citric acid`. */
  solute: name('the name of a solute'),
  /** The water activity to come down to, above 0 and below 1. */
  waterActivity: activityField(),
  /** Temperature of the solution, 0 to 100 degC; 25 degC when left out. */
  temperature: optional(solutionTemperature()),
});
export type SoluteForActivityInput = z.input<typeof schema>;
export interface SoluteForActivity {
  /** How much of the solute, in the unit of the water. */
  readonly mass: Quantity<'mass'>;
  /** Its share of the solution, 0 to 1 (degrees Brix over 100 for sugar). */
  readonly solids: number;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** A solution of one solute, as `solutionWaterActivity` takes it. */
interface OneSolute {
  readonly water: Quantity<'mass'>;
  readonly solutes: { solute: string; mass: Quantity<'mass'> }[];
  readonly temperature: Quantity<'temperature'>;
}

const HALVINGS = 50;

/** The most of a solute to a gram of water that its equation can be asked about. */
function mostPerWater({ id, name: own, ions, M_g_mol }: Solute, t: number): number {
  const soluble = solubilityOf(own, t)?.fraction;
  if (soluble !== undefined) return soluble / (1 - soluble);
  const salt = pitzerOf(own);
  if (salt !== undefined) return (salt.max_m * M_g_mol) / 1000;
  if (id === 'glycerol' || norrishOf(own) !== undefined) return assumed('most-looked-for');
  // the ideal law, to a hair short of its floor
  const molality = (1 / publishedEnd('raoult', 'least_activity') - 1) / (WATER * ions);
  return ((molality * M_g_mol) / 1000) * (1 - 1e-9);
}

/** How much sugar or salt brings water down to a water activity, with the water activity of a solution as `ofSolution` answers it. */
export function soluteForActivity(
  input: SoluteForActivityInput,
  ofSolution: (solution: OneSolute) => Pick<SoluteForActivity, 'basis' | 'cautions'> & { waterActivity: number },
): SoluteForActivity {
  const { water, solute: asked, waterActivity, temperature } = readInput(schema, input);
  const t = temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(temperature, 'degC');
  const solute = soluteNamed(asked, 'solute');
  const at = (perWater: number) =>
    ofSolution({
      water: { value: 1000, unit: 'g' },
      solutes: [{ solute: solute.name, mass: { value: 1000 * perWater, unit: 'g' } }],
      temperature: { value: t, unit: 'degC' },
    });
  let high = mostPerWater(solute, t);
  const driest = at(high).waterActivity;
  if (driest > waterActivity) {
    fail('OUT_OF_RANGE', 'waterActivity', waterActivity, `at least ${driest.toFixed(3)}, the least for ${solute.name}`);
  }
  let low = 0;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (at(middle).waterActivity > waterActivity) low = middle;
    else high = middle;
  }
  const { basis, cautions } = at(high);
  return answer({
    mass: quantityIn(high * valueIn(water, 'g'), 'g', water.unit),
    solids: high / (1 + high),
    basis: basis.flatMap((line) => (line.of === 'waterActivity' ? [{ ...line, of: 'mass' }] : [])),
    cautions,
  });
}
