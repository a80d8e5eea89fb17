/** When is this tray done? Invented: a tray of apple slices, put on the scale once an hour; nobody weighed these. */
import { finishForecast, formatQuantity, StillroomError, stopWeight } from 'stillroom';

const fresh = '1000 g';
const moisture = { low: '84 %', likely: '86 %', high: '87 %' };
const targetMoisture = '16 %';
const grams = [1000, 835, 695, 560, 470, 380, 310, 265, 232];

const { stopWeight: stop } = stopWeight({ fresh, moisture, targetMoisture });
const scale = (mass, rounding) => formatQuantity(mass, { step: 1, rounding });
console.log(`${fresh} of apple slices, ${moisture.low} to ${moisture.high} water, to be dried to ${targetMoisture}`);
console.log(`They may be dry at ${scale(stop.high, 'down')}. They are dry at ${scale(stop.low, 'down')}: stop there.`);

const weighings = grams.map((value, hour) => ({ time: { value: hour, unit: 'h' }, mass: { value, unit: 'g' } }));
for (const after of [1, 4, 6, 8]) {
  console.log(`After ${after} h the slices weigh ${grams[after]} g.`);
  try {
    const soFar = weighings.slice(0, after + 1);
    const forecast = finishForecast({ weighings: soFar, stopWeight: stop.low, targetMoisture });
    if (forecast.known) {
      const [low, likely, high] = ['low', 'likely', 'high'].map((end) => forecast.time[end].value.toFixed(1));
      console.log(`  They reach the stop weight ${likely} h after the start, or between ${low} and ${high} h.`);
    } else console.log(`  No forecast: ${forecast.reason.text}`);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    console.log(`  No forecast yet: ${error.message}`);
  }
}
