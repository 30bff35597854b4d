/** Our names for the arrays of a forecast, and for the object that holds them. */
const FIELDS = [
  'daily',
  'time',
  'precipitation_mm',
  'min_celsius',
  'max_celsius',
  'mean_celsius',
  'wind_kmh',
  'wind_from_degrees',
] as const;
export type Field = (typeof FIELDS)[number];

export type WeatherService = {
  /** The address, with `{latitude}` and `{longitude}` where the figures go. */
  address: string;
  /** What the service calls each of our fields. */
  fields: Record<Field, string>;
};

/**
 * The weather service that the environment asks for; null where none is asked for, a plain sentence where what is
 * asked for cannot be used. `WEATHER_FIELDS` lists `ours=theirs` with commas between.
 */
export function serviceOf(environment: NodeJS.ProcessEnv): WeatherService | null | string {
  const address = environment.WEATHER_URL?.trim();
  if (!address) return null;
  if (!address.includes('{latitude}') || !address.includes('{longitude}'))
    return 'WEATHER_URL must hold {latitude} and {longitude}';
  const tried = addressFor({ address }, { latitude: 0, longitude: 0 });
  if (!URL.canParse(tried) || !/^https?:$/.test(new URL(tried).protocol))
    return 'WEATHER_URL must be an http or https address';
  const fields = Object.fromEntries(FIELDS.map((name) => [name, name])) as Record<Field, string>;
  for (const pair of (environment.WEATHER_FIELDS ?? '').split(',').filter((each) => each.trim() !== '')) {
    const [ours = '', theirs = ''] = pair.split('=').map((each) => each.trim());
    if (!(FIELDS as readonly string[]).includes(ours) || theirs === '')
      return `WEATHER_FIELDS: ours=theirs with commas between; ours are ${FIELDS.join(', ')}`;
    fields[ours as Field] = theirs;
  }
  return { address, fields };
}

/** To two decimals, about a kilometre: a forecast is no finer, and the service need not know the gate. */
export function addressFor(
  { address }: Pick<WeatherService, 'address'>,
  { latitude, longitude }: { latitude: number; longitude: number },
): string {
  return address
    .replaceAll('{latitude}', latitude.toFixed(2))
    .replaceAll('{longitude}', longitude.toFixed(2));
}
