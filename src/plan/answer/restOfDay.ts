/** What has happened by now, as the plan of the rest answers it. */
import { type Caution, joinCautions } from '../../sources/basis';
import type { Happened } from '../done/entry';
import type { NotGoneOn } from '../done/rest';
import { planCaution } from '../figures/cautions';
import { type Making, massOf } from '../makes/making';
import type { Prepared } from '../program/prepare';
import type { FeasibleDay, FinishedSoFar, SetAside } from '../request/dayPlan';
import type { KnownLot } from '../request/lots';

/** The fields of an answer that only the rest of a day has. */
export function restAnswered(prepared: Prepared): Pick<FeasibleDay, 'nowMinute' | 'done' | 'setAside'> {
  const { rest } = prepared;
  if (rest === undefined) return {};
  return {
    nowMinute: rest.now,
    done: finishedSoFar(prepared, rest.finished),
    setAside: rest.notGoneOn.map((each) => setAside(prepared, each)),
  };
}

/** What is finished or runs of each product, in the order of the products. */
function finishedSoFar({ day, rest }: Prepared, finished: readonly Happened[]): FinishedSoFar[] {
  const products = [...new Set(finished.map(({ product }) => product))].sort((one, other) => one - other);
  return products.map((product): FinishedSoFar => {
    const own = finished.filter((each) => each.product === product);
    const making = rest?.made[product] as Making;
    return {
      name: own[0]?.label as string,
      raw: massOf(
        day,
        own.reduce((sum, { kg }) => sum + kg, 0),
      ),
      filled: own.reduce((sum, { units }) => sum + units, 0),
      unit: making.unit,
      plural: making.plural,
    };
  });
}

/** What was finished of a product, by its name. */
export const doneOf = (prepared: Prepared, name: string): FinishedSoFar | undefined =>
  finishedSoFar(prepared, prepared.rest?.finished ?? []).find((each) => each.name === name);

const REASONS: Readonly<Record<NotGoneOn['code'], (each: NotGoneOn) => string>> = {
  'waited-too-long': ({ what, waited, most }) => `${what.state} for ${waited} min, and may wait ${most} min`,
  'no-room-for-it': ({ what }) =>
    `no order of work was found in which it goes on before it has waited too long; it is ${what.state} now`,
  'cannot-be-made': () => 'what is left of the kitchen cannot finish it',
};

function setAside({ day }: Prepared, each: NotGoneOn): SetAside {
  const { what, code, waited } = each;
  const { label: lot, trade } = day.lots[what.lot] as KnownLot;
  return {
    name: what.label,
    howFar: what.state as SetAside['howFar'],
    fromLot: { lot, food: trade, raw: massOf(day, what.kg) },
    ...(what.units > 0 ? { filled: what.units } : {}),
    waited,
    reason: { code, text: REASONS[code](each) },
    instead: [{ text: cautionFor(what).text }],
  };
}

function cautionFor({ state, jars }: Happened): Caution {
  if (state === 'prepared') return planCaution('prepared-waited');
  if (state === 'hot') return planCaution('hot-waited');
  return planCaution(jars ? 'filled-waited' : 'filled-tray-waited');
}

/** What to mind of what is set aside. */
export const setAsideCautions = ({ rest }: Prepared): Caution[] =>
  joinCautions((rest?.notGoneOn ?? []).map((each) => cautionFor(each.what)));
