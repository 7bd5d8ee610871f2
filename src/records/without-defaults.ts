import type { z } from 'zod';

/**
 * A record without the values that its schema fills in by itself: what a person wrote, whichever version read it.
 * A field added to the schema later, with a default, so changes nothing in records that do not use it.
 * @param schema the record's schema
 * @param value the record as it was read
 */
export function withoutDefaults(schema: z.core.$ZodType, value: unknown): unknown {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (value === undefined) return undefined;
  if (def.type === 'optional') return withoutDefaults(def.innerType, value);
  if (def.type === 'default' || def.type === 'prefault') {
    const written = withoutDefaults(def.innerType, value);
    const usual = withoutDefaults(def.innerType, def.defaultValue);
    return JSON.stringify(written) === JSON.stringify(usual) ? undefined : written;
  }
  if (def.type === 'array' && Array.isArray(value)) return value.map((each) => withoutDefaults(def.element, each));
  if (def.type !== 'object' || value === null || typeof value !== 'object') return value;
  const known = Object.entries(value).map(([name, each]) => {
    const own = def.shape[name];
    return [name, own === undefined ? each : withoutDefaults(own, each)] as const;
  });
  return Object.fromEntries(known.filter(([, each]) => each !== undefined));
}
