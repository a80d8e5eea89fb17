/**
 * One tray of apple slices from the first weighing to the jar. The tray is invented; the figures of food are not.
 *
 *   npm run build:js && node examples/dry-a-tray.mjs
 */
import { dryingGuide, finishForecast, formatQuantity, keeps, stopWeight } from 'stillroom';
import { driedStorage, finishDried, moistureByWeighing } from 'stillroom/drying';
import { fruitWaterActivity } from 'stillroom/water-activity';

const fresh = '1000 g';
const moisture = { low: '84 %', likely: '86 %', high: '87 %' };
const targetMoisture = '16 %';
const weighings = [1000, 835, 695, 560, 470, 380, 310, 265, 232].map((grams, hour) => ({
  time: { value: hour, unit: 'h' },
  mass: { value: grams, unit: 'g' },
}));
/** What the tray weighed when the forecast said to look. */
const finished = '154 g';

const lines = [];
const say = (...text) => lines.push(...text);
const heading = (text) => say('', text, '-'.repeat(text.length));
const grams = (quantity, rounding = 'nearest') => formatQuantity(quantity, { step: 1, rounding });
const hours = (quantity) => `${quantity.value.toFixed(1)} h`;
const percent = (share) => `${(100 * share).toFixed(0)} %`;

say('A TRAY OF APPLE SLICES, DRIED', 'An invented example: nobody weighed this tray.');

const guide = dryingGuide({ food: 'apples' });
const stop = stopWeight({ fresh, moisture, targetMoisture });
const finish = finishDried({ food: 'apples' });
heading('Before: what to aim at');
say(
  `In goes          ${fresh} of slices, ${moisture.low} to ${moisture.high} water`,
  `Dryer            ${formatQuantity(guide.temperature)}`,
  `Done at          ${grams(stop.stopWeight.low, 'down')} to ${grams(stop.stopWeight.high, 'up')}, likely ${grams(stop.stopWeight.likely)} (${targetMoisture} moisture)`,
  `To be sure       go on to ${grams(stop.stopWeight.low, 'down')}: dry enough however wet the apples were`,
  `Water to go      ${grams(stop.waterRemoved.likely)}`,
);

heading('Meanwhile: what the weighings say');
say(' hour    weight   ready at, 90 of 100 cases');
weighings.forEach(({ time, mass }, index) => {
  const soFar = weighings.slice(0, index + 1);
  let text = 'too early to tell';
  if (soFar.length >= 3) {
    const forecast = finishForecast({ weighings: soFar, stopWeight: stop.stopWeight.low, targetMoisture });
    if (forecast.known) {
      const { low, likely, high } = forecast.time;
      text = `${hours(likely)}   (${hours(low)} to ${hours(high)})`;
    }
  }
  say(`${String(time.value).padStart(5)}   ${grams(mass).padStart(7)}   ${text}`);
});

// the wetter the apples were, the less of this weight is solids: the high end is the one to judge by
const [likely, most] = [moisture.likely, moisture.high].map(
  (start) => moistureByWeighing({ fresh, moisture: start, dried: finished }).driedMoisture,
);
heading('Afterwards: is it dry?');
say(
  `The scale shows  ${finished}`,
  `That is          ${percent(likely)} moisture if the apples were ${moisture.likely} water, ${percent(most)} if ${moisture.high}`,
  `Dryness test     ${guide.drynessTest}`,
  `Then             ${finish.conditioning.days.low.value} days or more in loosely filled closed jars, shaken daily`,
);

heading('And will it keep?');
const judge = (share) => {
  const { waterActivityRange: range } = fruitWaterActivity({ food: 'apple', moisture: share });
  return { range, ...keeps({ waterActivity: range }) };
};
for (const [name, share] of [
  [`the tray, ${percent(most)}`, most],
  ['a piece at 20 %', 0.2],
  ['a piece at 30 %', 0.3],
]) {
  const { range, verdict } = judge(share);
  const activity = `${range.likely.toFixed(2)} (${range.low.toFixed(2)} to ${range.high.toFixed(2)})`;
  say(`${name.padEnd(17)}water activity ${activity}: ${verdict}`);
}
const { advice, cautions } = judge(most);
const stored = driedStorage({ food: 'apples', temperature: '60 degF' });
say('', `For the tray: ${advice}`);
if (stored.known)
  say(
    `Printed guides keep it ${stored.months.low} to ${stored.months.high} months at 60 °F, conditioned and airtight.`,
  );

heading('Cautions');
for (const { text } of [...cautions, ...stop.cautions]) if (!lines.includes(`- ${text}`)) say(`- ${text}`);
process.stdout.write(`${lines.join('\n')}\n`);
