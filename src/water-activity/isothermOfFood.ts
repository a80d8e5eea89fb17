/** The published isotherm of a food. Internal. */
import { nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import type { FoundFood } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { foodOf, nameOf } from '../foods/tables';
import { valueIn } from '../quantity/scale';
import { derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { assumed } from './assumptions';
import { activityCaution } from './cautions';
import { REFERENCE_TEMPERATURE } from './fields';
import { equationNamed } from './isothermEquations';
import { activitiesOf, formBasis, type IsothermRow, isotherms, isRangeAssumed, temperaturesOf } from './isothermTables';
import type { Isotherm, IsothermChoice, Limits } from './isothermTypes';

const spoken = ({ low, high }: Limits): string => (low === high ? `${low} degC` : `${low} to ${high} degC`);

const farFrom = (row: IsothermRow, t: number): number => {
  const { low, high } = temperaturesOf(row);
  return Math.max(low - t, t - high, 0);
};

/** The sets of the asked id and model, of those of one food. */
function setsOf(sets: readonly IsothermRow[], food: string, { model, set }: IsothermChoice): readonly IsothermRow[] {
  if (set !== undefined) {
    const own = sets.filter(({ id }) => id === set);
    const options = sets.map(({ id }) => id);
    if (own.length === 0) {
      fail('UNKNOWN_NAME', 'set', set, `a published set of ${food}: ${options.join('; ')}`, { options });
    }
    if (model === undefined) return own;
    return setsOf(own, food, { model });
  }
  if (model === undefined) return sets;
  const key = nameKey(model);
  const exact = sets.filter((row) => nameKey(row.model) === key);
  const akin = sets.filter((row) => nameKey(equationNamed(row.model).family ?? '') === key);
  const found = exact.length > 0 ? exact : akin;
  const options = [...new Set(sets.map((row) => row.model))];
  if (found.length === 0) {
    fail('UNKNOWN_NAME', 'model', model, `a model published for ${food}: ${options.join('; ')}`, { options });
  }
  return found;
}

/** Trade names of the foods that have an isotherm. */
const foodsWithIsotherm = (): string[] => [...new Set(isotherms.map(({ food }) => nameOf(food)))];

const noIsotherm = ({ id, name }: FoundFood): NotKnown =>
  notKnown({
    code: 'no-isotherm',
    text: `These tables have no isotherm of ${name}.`,
    instead: [
      ...(foodOf(id).kind === 'fruit'
        ? [{ text: 'From 14% moisture up, estimate it from the sugars of the fruit: fruitWaterActivity.', food: name }]
        : []),
      { text: 'Measure the water activity of the finished food, or give constants of your own as `parameters`.' },
      ...foodsWithIsotherm().map((food) => ({ text: `These tables have an isotherm of ${food}.`, food })),
    ],
    basis: [derived('known', 'the isotherms of these tables')],
    cautions: [activityCaution('measure-before-shelf')],
  });

/** The published isotherm of a food, or of the wider food that lends it one. */
export function isothermOfFood(food: FoundFood, choice: IsothermChoice): Isotherm | NotKnown {
  const served = figuresFor(food.id, 'isotherm').find((id) => isotherms.some((row) => row.food === id));
  if (served === undefined) return noIsotherm(food);
  const sets = setsOf(
    isotherms.filter((row) => row.food === served),
    food.name,
    choice,
  );
  const given = choice.temperature === undefined ? undefined : valueIn(choice.temperature, 'degC');
  const wanted = given ?? REFERENCE_TEMPERATURE;
  // the table lists GAB first; a stable sort keeps that order among sets as near as each other
  const row = [...sets].sort((one, other) => farFrom(one, wanted) - farFrom(other, wanted))[0] as IsothermRow;
  if (given !== undefined && farFrom(row, given) > assumed('degree')) {
    const all = [...new Set(sets.map((set) => spoken(temperaturesOf(set))))].join(', ');
    fail('OUT_OF_RANGE', 'temperature', `${given} degC`, `a temperature that ${food.name} was measured at: ${all}`);
  }
  const equation = equationNamed(row.model);
  const { low: coldest, high: warmest } = temperaturesOf(row);
  const t = Math.min(Math.max(wanted, coldest), warmest);
  const lent = served === food.id ? {} : { food: nameOf(served) };
  const recalled = row.obtained === 'memory' || formBasis(equation, '').kind === 'recalled';
  return {
    known: true,
    food: food.name,
    set: row.id,
    ...(row.state === '' ? {} : { state: row.state }),
    model: row.model,
    temperature: { value: t, unit: 'degC' },
    waterActivityLimits: activitiesOf(row),
    basis: (of) => [
      { ...basisOf(row, of, `isotherm constants of ${nameOf(served)}`), ...lent },
      formBasis(equation, of),
    ],
    cautions: [
      activityCaution('isotherm-state'),
      activityCaution('wettest-piece'),
      ...(isRangeAssumed(row) ? [activityCaution('isotherm-range-assumed')] : []),
      ...(row.temperature_degC === null ? [activityCaution('isotherm-temperature-assumed')] : []),
      ...(given === undefined ? [activityCaution('isotherm-temperature-chosen')] : []),
      ...(row.caution === undefined ? [] : [activityCaution(row.caution)]),
      ...(recalled ? [caution('recalled')] : []),
    ],
    moisture: (aw) => equation.moisture(aw, row.parameters, t),
  };
}
