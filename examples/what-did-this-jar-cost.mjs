/** What did this jar cost? Invented: 12 lb of blueberries made into jam at 250 ft, at prices that are made up too. */
import { planDay } from 'stillroom';

const lots = [{ food: 'blueberries', raw: '12 lb', price: '3.20 USD', per: '1 lb' }];
const kitchen = {
  hours: '5 h',
  elevation: '250 ft',
  utilities: { stove: 'gas', gas: '1.60 USD', gasPer: '1 therm' },
  pantry: [
    { item: 'sugar', amount: '10 lb', price: '8.50 USD' },
    { item: 'bottled lemon juice', amount: '2 lb', price: '4.20 USD' },
    { item: 'pectin', amount: '1 lb', price: '14 USD' },
  ],
  burners: 4,
  pots: [{ volume: '8 qt' }],
  canners: [{ method: 'boiling-water', holds: { 'half-pint': 8 } }],
  jars: [{ jar: 'half-pint', count: 24, price: '1.25 USD' }],
  lids: { count: 24, price: '0.30 USD' },
};

for (const least of [10, 40]) {
  const products = [{ make: 'jam', from: 'blueberries', jar: 'half-pint', least, most: least }];
  const plan = planDay({ invented: true, lots, kitchen, products });
  if (!plan.feasible) {
    console.log(`${least} jars: no plan: ${plan.reason.text}. The most is ${plan.most[0].count}.`);
    continue;
  }
  const [{ name, units, costs }] = plan.products;
  console.log(`${units.promised} jars of ${name}: ${costs.total.value.toFixed(2)} ${costs.total.unit}`);
  for (const { what, cost } of costs.lines) console.log(`  ${what}: ${cost.value.toFixed(2)}`);
  const { low, high } = costs.perUnit;
  console.log(`  One jar: ${low.value.toFixed(2)}${high.value > low.value ? ` to ${high.value.toFixed(2)}` : ''}`);
  console.log(`  Not counted: ${plan.costs.notPriced.join(', ')}`);
}
