import type { Ingredient, PlannedProduct } from '../plan/request/plannedProduct';
import { isMass } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { capital, clocks, counted, gauge, isMetric, kilowattHours, price, volume, weight, weights } from './amounts';
import { bullets } from './markdown';

export function productBlock(product: PlannedProduct, number: number): string[] {
  const { name, from, ready, trimmings, ingredients, jars, pots, trays, packs, steps, units, cost } = product;
  const lines: string[] = [];
  const of = trimmings === undefined ? 'of the trimmings of' : 'of';
  const lots = from.map(({ lot, raw }) => `${weight(raw, 'up')} ${of} ${lot}`).join(' and ');
  const trimmed =
    trimmings === undefined || valueIn(trimmings.high, 'g') < 1 ? '' : `; trimmings ${weights(trimmings)}`;
  lines.push(
    trimmings === undefined
      ? `Take ${lots}.`
      : `Take ${lots}. Ready weight ${weights(ready)}, likely ${weight(ready.likely)}${trimmed}.`,
  );
  if (jars?.acid !== undefined) lines.push(`**Acid, never left out: ${jars.acid}.**`);
  for (const line of ingredients) lines.push(ingredient(line));
  if (jars?.sterilizeJars) lines.push('Sterilize the empty jars: the printed process is too short to do it.');
  for (const { pot, batches, most } of pots?.batches ?? []) {
    const each = batches === 1 ? 'In one batch' : `In ${batches} batches`;
    lines.push(
      `${each} in the ${pot}, never fuller than ${volume(most, 'down')}; about ${pots?.minutesEach} min${batches === 1 ? '' : ' each'}.`,
    );
  }
  for (const step of steps) lines.push(step);
  if (jars !== undefined) {
    const pressure = jars.pressure === undefined ? '' : ` at ${gauge(jars.pressure, isMetric(ready.low))}`;
    const net = jars.netMass === undefined ? '' : `, net ${weight(jars.netMass, 'down')}`;
    lines.push(`Each jar takes ${volume(jars.fillVolume)}${net}.`);
    for (const { canner, loads, jarsPerLoad, sharedWith } of jars.loads) {
      const many = loads === 1 ? `1 load of up to ${jarsPerLoad} jars` : `${loads} loads of up to ${jarsPerLoad} jars`;
      const shared = sharedWith.length === 0 ? '' : `, shared with ${sharedWith.join(' and ')}`;
      lines.push(
        `${capital(canner)}: ${many}${shared}; **process ${jars.minutes} min${pressure}** for ${jars.jar} jars, ${jars.pack} pack; about ${clocks(jars.loadMinutes)} a load in all.`,
      );
    }
  }
  if (trays !== undefined) lines.push(...trayLines(product));
  if (packs !== undefined) {
    const head =
      packs.headspace === undefined
        ? ''
        : `; ${formatQuantity(packs.headspace, isMetric(ready.low) ? { unit: 'mm', rounding: 'up' } : { fraction: 8 })} of headspace in a rigid box`;
    lines.push(`Packs of ${weight(packs.size)}, about ${volume(packs.room, 'up')} of freezer room each${head}.`);
  }
  if (product.energy !== undefined) lines.push(`Energy: ${kilowattHours(product.energy)}.`);
  if (cost !== undefined && cost.total.value > 0)
    lines.push(`Costs ${price(cost.total)}: ${price(cost.perUnit.high)} for each ${units.unit} promised.`);
  return [`## ${number}. ${capital(name)}: ${countOn(product)}`, bullets(lines)];
}

/** What you can count on, and how many there may be. */
function countOn({ jars, units }: PlannedProduct): string {
  const sure = `count on ${counted(units.promised, units.unit, units.plural)}`;
  if (units.ready === units.promised) return sure;
  return `${sure}, ${jars !== undefined ? `have ${units.ready} ready` : `maybe ${units.ready}`}`;
}

function ingredient({ what, role, amount, or, note }: Ingredient): string {
  const write = (value: Ingredient['amount']): string =>
    isMass(value as Quantity)
      ? weight(value as Quantity<'mass'>)
      : volume(value as Quantity<'volume'>, role === 'acid' ? 'up' : 'nearest');
  return `${capital(what)}: ${write(amount)}${or === undefined ? '' : ` (${write(or)})`}${note === undefined ? '' : `; ${note}`}.`;
}

function trayLines({ trays }: PlannedProduct): string[] {
  if (trays === undefined) return [];
  const { where, trays: count, perTray, stopWeight, temperature, hours: time, test, dried } = trays;
  const at = temperature === undefined ? '' : ` at ${formatQuantity(temperature)}`;
  const long = time === undefined ? '' : `, ${time.low.value} to ${time.high.value} h`;
  const lines = [
    `${capital(where)}: ${counted(count, 'tray', 'trays')} with up to ${weight(perTray, 'down')}${count === 1 ? '' : ' each'}${at}${long}.`,
  ];
  if (stopWeight !== undefined) {
    lines.push(
      `A full tray is done between ${weight(stopWeight.low, 'down')} and ${weight(stopWeight.high, 'down')} (the tray itself not counted); go on to **${weight(stopWeight.low, 'down')}** to be sure.`,
    );
  }
  if (test !== undefined) lines.push(`Dryness test: ${test}.`);
  lines.push(`Gives ${weights(dried)} in all.`);
  return lines;
}
