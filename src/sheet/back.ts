import { fail } from '../errors/StillroomError';
import type { FeasibleDay, LeftOut } from '../plan/request/dayPlan';
import type { AimWeights } from '../plan/request/planFields';
import type { Caution } from '../sources/basis';
import { capital, hours, price } from './amounts';
import { cautionsOf, saysOf } from './beside';
import { letter } from './clock';
import { costsOf } from './costs';
import type { Pen } from './pen';
import type { Section } from './sheet';
import { sourcesOf } from './sourceLines';
import { say, type Text } from './words';

/** The back: why, what it costs, what is left, what was left out, the cautions that no other piece has said, sources. */
export function backOf({ plan, measure }: Pen, said: ReadonlySet<string>): Section[] {
  const left = [
    ...plan.keptFresh.map(({ lot, raw }) => say('left.kept', { weight: measure.batch(raw, 'nearest'), lot })),
    ...plan.notSound.map(({ lot, raw }) => say('left.bad', { weight: measure.batch(raw, 'nearest'), lot })),
  ];
  const fresh = plan.leftFresh.map(({ lot, raw, reason }) =>
    say('left.fresh', { weight: measure.batch(raw, 'nearest'), lot, reason: capital(reason.text) }),
  );
  return [
    { title: say('back.why'), lines: whyOf(plan) },
    ...costsOf(plan),
    { title: say('back.left'), lines: [...fresh, ...(left.length === 0 ? [] : [`${left.join(say('dot'))}.`])] },
    leftOutOf(plan.leftOut),
    { title: say('back.cautions'), lines: allCautions(plan, said) },
    { title: say('back.sources'), lines: sourcesOf(plan) },
  ].filter(({ lines }) => lines.length > 0);
}

/** The most that is said to do instead, best first: the rest stands in the plan. */
const MOST_INSTEAD = 3;

export const leftOutOf = (leftOut: readonly LeftOut[]): Section => ({
  title: say('back.out'),
  lines: leftOut.map(({ name, reason, instead }) =>
    say('out.line', {
      name: capital(name),
      reason: reason.text,
      instead:
        instead.length === 0
          ? ''
          : say('out.instead', {
              instead: instead
                .slice(0, MOST_INSTEAD)
                .map(({ text }) => text)
                .join(say('out.or')),
            }),
    }),
  ),
});

/** Gains below this are noise of rounding. */
const WORTH_TELLING = 0.005;

function whyOf(plan: FeasibleDay): string[] {
  const { notMade, limits = [], limitsNotComputed = [], yields = [], work, provenBest, gap, products } = plan;
  const aim = aimOf(plan);
  const unit = say(typeof plan.aim === 'string' ? `gain.${plan.aim}` : 'gain.mix');
  const places = plan.aim === 'fewest hours' ? 0 : 2;
  const gained = (low: number, high = low) =>
    `${high > low ? say('range', { from: low.toFixed(places), to: high.toFixed(places) }) : low.toFixed(places)}${unit}`;
  const proof: Text = provenBest ? 'back.proof-best' : 'back.proof-gap';
  // a plan that was changed by hand may hold anything
  if (!Number.isFinite(gap)) fail('WRONG_TYPE', 'gap', gap, 'how much better a plan could be, a number');
  const percent = Math.min(MOST_PERCENT, Math.max(0, Math.ceil(100 * gap)));
  return [
    say(products.length === 0 ? 'back.proof-none' : proof, { aim, percent }),
    ...(products.length === 0
      ? []
      : [say('back.work', { used: hours(work.handsBusy.minutes), available: hours(work.handsBusy.available) })]),
    ...notMade.map(({ name, reason }) => say('back.not-made', { name, reason: reason.text })),
    ...limits.map(({ what, tried: oneMore, gain, mostGain: atMost }) =>
      say('back.limit', { what, more: oneMore, gain: gained(gain, atMost) }),
    ),
    ...(limitsNotComputed.length === 0
      ? []
      : [say('back.not-computed', { names: limitsNotComputed.join(say('comma')) })]),
    ...yields.flatMap(({ food, poor = 0, likely = 0, rich = 0 }) => {
      const most = Math.max(poor, likely, rich);
      return most < WORTH_TELLING ? [] : [say('back.yield', { food, gain: gained(most) })];
    }),
  ];
}

const WEIGHED = ['worth', 'waste', 'money', 'handsHours'] as const satisfies readonly (keyof AimWeights)[];

/** The aim in words: a cost with its figure, weights with what they are for. */
function aimOf({ aim, objective, costs: cost, products }: FeasibleDay): string {
  if (aim === 'least cost' && cost !== undefined && products.length > 0) {
    // up to the cent: a jar never looks cheaper than it is
    const each = { ...cost.total, value: Math.ceil(-100 * objective - 1e-6) / 100 };
    return say('aim.each', { aim: say(`aim.${aim}`), price: price(each) });
  }
  if (typeof aim === 'string') return say(`aim.${aim}`);
  const parts = WEIGHED.flatMap((key) => {
    const weight = aim[key] ?? 0;
    return weight > 0 ? [say(`aim.${key}`, { weight })] : [];
  });
  return say('aim.mix', { parts: parts.join(say('comma')) });
}

const SEVERITY = { danger: 0, quality: 1, note: 2 } as const;

/** Each caution once, dangers first, with the letters of the products that it is for; the day's own have none. */
function allCautions({ cautions, products }: FeasibleDay, said: ReadonlySet<string>): string[] {
  const found = new Map<string, { caution: Caution; letters: string[] }>();
  for (const caution of cautions) found.set(saysOf(caution), { caution, letters: [] });
  products.forEach((product, index) => {
    for (const caution of cautionsOf(product)) {
      const known = found.get(saysOf(caution));
      if (known === undefined) found.set(saysOf(caution), { caution, letters: [letter(index)] });
      else if (known.letters.length > 0 && !known.letters.includes(letter(index))) known.letters.push(letter(index));
    }
  });
  return [...found.values()]
    .filter(({ caution }) => !said.has(saysOf(caution)))
    .sort((one, other) => SEVERITY[one.caution.severity] - SEVERITY[other.caution.severity])
    .map(({ caution, letters }) =>
      letters.length === 0 || letters.length === products.length
        ? caution.text
        : say('colon', { label: letters.join(' '), text: caution.text }),
    );
}
const MOST_PERCENT = 1000;
