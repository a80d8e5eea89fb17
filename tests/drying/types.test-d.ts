import { expectTypeOf, test } from 'vitest';
import {
  type DriedStorage,
  driedMass,
  finishForecast,
  freezeDryLoad,
  type Jerky,
  leather,
  oxygenAbsorbers,
  stopWeight,
  trayLoad,
} from '../../src/drying/index';
import { iceVapourPressure } from '../../src/heat/index';
import type { Quantity, Range } from '../../src/quantity/index';

test('wrong dimensions do not compile', () => {
  // @ts-expect-error a volume where a mass belongs
  driedMass({ fresh: '2 cups', moisture: 0.8, targetMoisture: 0.2 });
  // @ts-expect-error a mass where an area belongs
  trayLoad({ area: '2 lb' });
  // @ts-expect-error a length where a volume belongs
  leather({ area: '1 ft2', puree: '2 in' });
  // @ts-expect-error a pressure where a temperature belongs
  iceVapourPressure({ temperature: '10 Pa' });
  // @ts-expect-error a mass where a volume belongs
  oxygenAbsorbers({ container: '2 lb', moisture: 0.05 });
  // @ts-expect-error a bare number where a time belongs
  finishForecast({ weighings: [{ time: 1, weight: '1 kg' }], stopWeight: '1 kg' });
  // @ts-expect-error the trays are missing
  freezeDryLoad({ fresh: '1 lb', moisture: 0.9, machine: { iceCapacity: '1 lb' } });
});

test('answers carry their dimensions, and unions must be looked at', () => {
  expectTypeOf(driedMass).returns.toHaveProperty('mass').toEqualTypeOf<Quantity<'mass'>>();
  expectTypeOf(stopWeight).returns.toHaveProperty('weight').toEqualTypeOf<Range<Quantity<'mass'>>>();
  expectTypeOf<Extract<DriedStorage, { known: false }>>().not.toHaveProperty('months');
  expectTypeOf<Extract<Jerky, { tested: false }>>().toHaveProperty('instead');
});
