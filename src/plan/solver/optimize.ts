import type { Program } from './linearProgram';
import { decidedOf, relaxation } from './relaxation';
import { mostNodes, reachOf, type Solved, type SolveOptions, solve } from './solve';

/** A part of the worth too small to look for. */
const STEP = 1e-7;
/** A search takes three to six steps as a rule, and never this many. */
const MOST_STEPS = 50;

/**
 * The best plan of a program, also where its worth is divided by a sum (`per`): cost for each unit promised.
 *
 * Such a linear-fractional program is solved by Dinkelbach's method (W. Dinkelbach, On nonlinear fractional
 * programming, Management Science 13, 1967; recalled): with the rate of the best plan so far, maximize worth - rate x
 * sum. A plan above 0 has a better rate and the next step goes on from it; where 0 is the most, no rate is better.
 * Of the plans at the best rate the one with the largest sum is taken.
 *
 * @returns as `solve`; `worth` is then the worth for each unit of the sum
 */
export function optimize(program: Program, options: SolveOptions = {}): Solved {
  const { per, ...linear } = program;
  if (per === undefined) return solve(program, options);
  const nodes = options.nodes ?? mostNodes(program);
  const { start, effort } = options;
  const counted = effort === undefined ? {} : { effort };
  let best = start !== undefined && sumOf(per, start.values) > 0 ? start : solve(linear, { nodes, ...counted });
  if (!best.feasible) return best;
  for (let step = 0; step < MOST_STEPS; step++) {
    const found = solve(minus(linear, rateOf(program, best.values), per), {
      start: { ...best, worth: 0 },
      nodes,
      ...counted,
    });
    if (found.worth > STEP * Math.max(STEP, Math.abs(worthOf(program, best.values)))) best = found;
    else {
      best = {
        ...best,
        optimal: found.optimal,
        gap: found.optimal ? 0 : rateGap(program, best.values, reachOf(found)),
      };
      break;
    }
  }
  const rate = rateOf(program, best.values);
  const most = largest(program, rate, best, options, nodes);
  return { ...best, worth: rateOf(program, most), values: most };
}

type Values = Solved['values'];
type Terms = NonNullable<Program['per']>;

const sumOf = (terms: Terms, values: Values): number =>
  terms.reduce((sum, [name, weight]) => sum + weight * decidedOf(values, name), 0);
const worthTerms = ({ variables }: Program): Terms =>
  variables.flatMap(({ name, worth }) => (worth === 0 ? [] : [[name, worth] as const]));
const worthOf = (program: Program, values: Values): number => sumOf(worthTerms(program), values);
const rateOf = (program: Program, values: Values): number =>
  worthOf(program, values) / sumOf(program.per ?? [], values);

/** The program with `rate` taken off for each unit of the sum. */
function minus({ variables, bounds }: Program, rate: number, per: Terms): Program {
  const weights = new Map(per);
  return {
    variables: variables.map((each) => ({ ...each, worth: each.worth - rate * (weights.get(each.name) ?? 0) })),
    bounds,
  };
}

/** How much better a rate could be where a step ended unproven: what it may have missed, over the smallest sum. */
function rateGap(program: Program, values: Values, missed: number): number {
  const { per = [], ...linear } = program;
  const least = relaxation(linear)(new Map(), new Map(per.map(([name, weight]) => [name, -weight])));
  const better = missed / Math.max(1, -(least?.worth ?? -1));
  return Math.min(1, better / Math.max(Math.abs(rateOf(program, values)), STEP));
}

/** Of the plans at this rate the one with the largest sum. */
function largest(program: Program, rate: number, best: Solved, { among, effort }: SolveOptions, nodes: number): Values {
  const { per = [], variables, bounds } = program;
  const slack = STEP * Math.abs(rate);
  const terms = worthTerms(minus(program, rate, per));
  const found = solve(
    {
      variables: variables.map((each) => ({ ...each, worth: new Map(per).get(each.name) ?? 0 })),
      bounds: [...bounds, { name: 'at the best rate', terms, min: -slack }],
    },
    {
      ...(among === undefined ? {} : { among }),
      start: { ...best, worth: sumOf(per, best.values) },
      nodes: Math.ceil(nodes / 4),
      ...(effort === undefined ? {} : { effort }),
    },
  );
  return rateOf(program, found.values) >= rate - 2 * slack ? found.values : best.values;
}
