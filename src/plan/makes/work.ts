import { MINUTES_A_JAR } from '../../process/loadTimeline';
import type { Basis } from '../../sources/basis';
import type { Make } from '../request/planInput';

/**
 * How long the work takes where the cook names no figures of their own: common practice, no source. Every figure can
 * be set on the product (`minutesPerPound`, `minutesPerUnit`, `cook`).
 */
export interface WorkTimes {
  /** Washing, cutting, peeling, pitting: minutes of one pair of hands for each raw pound. */
  readonly perPound: number;
  /** Filling, wiping, lidding or bagging: minutes for each jar or pack. */
  readonly perUnit: number;
  /** Minutes in the pot for one batch; none where nothing is cooked. */
  readonly cook?: number;
  /** One pair of hands stirs as long as it cooks. */
  readonly stir?: true;
}

/** Minutes of one pair of hands to put a jar into the canner and to lift it out again. */
export const LIFT_A_JAR = 2 * MINUTES_A_JAR.likely;

const BY_MAKE: Readonly<Record<Make, WorkTimes>> = {
  jars: { perPound: 3, perUnit: 2, cook: 20 },
  jam: { perPound: 3, perUnit: 1.5, cook: 45, stir: true },
  dried: { perPound: 3, perUnit: 1 },
  'freeze-dried': { perPound: 3, perUnit: 1 },
  leather: { perPound: 2, perUnit: 2, cook: 20 },
  frozen: { perPound: 2.5, perUnit: 1 },
  powder: { perPound: 1, perUnit: 1 },
  vinegar: { perPound: 0.5, perUnit: 2 },
  'jelly stock': { perPound: 0.5, perUnit: 2, cook: 40 },
};
/** Forms that cook longer than pieces do before they are filled. */
const COOK_BY_FORM: ReadonlyMap<string, number> = new Map([
  ['sauce', 60],
  ['puree', 45],
  ['juice', 45],
  ['butter', 150],
  ['thick sauce', 120],
]);
/** Forms that burn to the pot where nobody stirs. */
const STIRRED_FORMS = ['butter'];
const QUICK_FORMS = ['whole', 'sauce', 'puree', 'juice', 'butter'];

/** The customary work times of a product. */
export function workTimes(make: Make, form: string | undefined, pack: string | undefined): WorkTimes {
  const times = BY_MAKE[make];
  if (make !== 'jars') return times;
  const perPound = QUICK_FORMS.includes(form ?? '') ? 1.5 : times.perPound;
  if (pack === 'raw') return { perPound, perUnit: times.perUnit };
  return {
    perPound,
    perUnit: times.perUnit,
    cook: COOK_BY_FORM.get(form ?? '') ?? 20,
    ...(STIRRED_FORMS.includes(form ?? '') ? { stir: true } : {}),
  };
}

export const WORK_BASIS: Basis = { of: 'minutes of work and of cooking', kind: 'common-practice' };
