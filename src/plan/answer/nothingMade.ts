import type { Instead } from '../../sources/no';
import type { LeftOut, NothingMade, NotMade } from '../request/dayPlan';
import type { Kitchen } from '../request/planInput';

/** What would let in a product that could be made and is not, by the code of why it is not. */
const LETS_IN: Readonly<Record<string, string>> = {
  'not-required': 'ask for some of it with `least`, or choose another aim',
  'not-wanted': 'raise its `most`',
  'too-few-trimmings': 'make more of what its trimmings fall off, or add trays or hours',
  'too-little-fruit': 'add fruit, take a smaller jar, or lower `smallest`',
  'too-little-of-another-lot': 'add more of the other food that goes into it',
  'no-pot': 'name a pot',
  'pots-too-small': 'add a larger pot, another pot or hours',
  'day-too-short': 'add hours',
  'dryer-too-small': 'add trays or hours, or lower `smallest`',
  'freeze-dryer-too-small': 'plan more days, or lower `smallest`',
  'smallest-batch': 'lower `smallest`',
  'not-cheaper': 'ask for some of it with `least`, or choose another aim',
};
const MORE = 'add hours, hands or stock';

/** What a kitchen may be given, where not one recipe was found that it closes. */
const EQUIPMENT = ['canners', 'pots', 'freezer', 'dryer', 'freezeDryer'] as const;

/** Why a plan makes nothing, and what would let something in; nothing where it makes something. */
export function nothingMade(
  kitchen: Kitchen,
  leftOut: readonly LeftOut[],
  notMade: readonly NotMade[],
  runsLate: boolean,
): NothingMade {
  const closed = leftOut.flatMap(({ name, instead }) =>
    instead.map((each): Instead => ({ ...each, text: `${name}: ${each.text}` })),
  );
  const open = notMade.map(({ name, reason }): Instead => ({ text: `${name}: ${LETS_IN[reason.code] ?? MORE}` }));
  const lacking = EQUIPMENT.filter((each) => kitchen[each] === undefined);
  const unasked: Instead[] = [
    ...(lacking.length === 0
      ? []
      : [{ text: `add to the kitchen what you have of: ${lacking.map((each) => `\`${each}\``).join(', ')}` }]),
    { text: 'name a product, and the plan says why it cannot be made' },
  ];
  return {
    text: runsLate
      ? 'no order of work was found that fits these hours'
      : notMade.length > 0
        ? 'nothing that could be made fits this kitchen and these hours'
        : 'nothing can be made of these lots in this kitchen',
    instead: closed.length + open.length > 0 ? [...open, ...closed] : unasked,
  };
}
