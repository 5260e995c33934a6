/** One day of weather. */
export interface DayWeather {
  /** 1 (1 January) to 365 (31 December); 29 February is left out. */
  readonly dayOfYear: number;
  readonly maxF: number;
  readonly minF: number;
  readonly rainInches: number;
}

/** A year of weather, 1 January to 31 December. */
export interface WeatherYear {
  readonly latitudeDegrees: number;
  /** The calendar year of a record; null for a generated year. */
  readonly year: number | null;
  readonly origin: 'generated' | 'record';
  readonly days: readonly DayWeather[];
}
