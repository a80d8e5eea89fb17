/** The published range that a learned figure starts from; for work the customary one. */
import { dryingGuide } from '../drying/guide/dryingGuide';
import { readFood, readForm } from '../foods/fields';
import { WORK_BASIS } from '../plan/makes/work';
import { composition } from '../produce/composition/composition';
import { rawForJars } from '../produce/yields/rawForJars';
import { yieldOf } from '../produce/yields/readyFromRaw';
import { mapRange } from '../quantity/range';
import { valueIn } from '../quantity/scale';
import type { Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { practiceBasis } from '../sources/table';
import { orNothing } from './foodKinds';
import { type Observation, pounds } from './observations';
import type { Scale } from './statistics';

/** A range to start from. */
export interface Prior {
  readonly range: Range<number>;
  readonly scale: Scale;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** How far work may be from the customary figure (a choice of this library, common practice). */
const HALF_TO_DOUBLE = { low: 0.5, high: 2 };

function priorOfWork(all: readonly Observation[]): Prior {
  const likely = all.reduce((sum, { customary }) => sum + (customary as number), 0) / all.length;
  return {
    range: { low: likely * HALF_TO_DOUBLE.low, likely, high: likely * HALF_TO_DOUBLE.high },
    scale: 'times',
    basis: [
      WORK_BASIS,
      practiceBasis('minutesPerPound', 'customary minutes of work, taken as half to double (a choice of this library)'),
    ],
    cautions: [],
  };
}

function priorOfMoisture(food: string): Prior | undefined {
  const found = composition({ food });
  if (!found.known) return undefined;
  const { moisture: range, basis, cautions } = found;
  return { range, scale: 'share', basis: basis.filter(({ of }) => of === 'water'), cautions };
}

function priorOfYield(food: string, form: string): Prior | undefined {
  const found = yieldOf(readFood(food).id, readForm(form));
  if (!found.known) return undefined;
  return { range: found.yield, scale: 'share', basis: found.basis, cautions: found.cautions };
}

function priorOfJars(food: string, form: string, jar: string): Prior | undefined {
  const found = rawForJars({ food, form, jar, jars: 1 });
  if (!found.known) return undefined;
  return { range: mapRange(found.raw, pounds), scale: 'times', basis: found.basis, cautions: found.cautions };
}

function priorOfDrying(food: string, form: string): Prior | undefined {
  const found = dryingGuide({ food, form });
  if (!found.known) return undefined;
  const range = mapRange(found.hours, (time) => valueIn(time, 'h'));
  return { range, scale: 'times', basis: found.basis.filter(({ of }) => of === 'hours'), cautions: found.cautions };
}

/** The range of a figure, from the first of its observations; nothing where these tables hold none. */
export function priorOf(all: readonly [Observation, ...Observation[]]): Prior | undefined {
  const [{ figureName, food, form = '', jar = '' }] = all;
  if (figureName === 'minutesPerPound') return priorOfWork(all);
  return orNothing(() => {
    if (figureName === 'moisture') return priorOfMoisture(food);
    if (figureName === 'yield') return priorOfYield(food, form);
    return figureName === 'rawPerJar' ? priorOfJars(food, form, jar) : priorOfDrying(food, form);
  });
}
