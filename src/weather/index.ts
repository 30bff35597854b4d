// The forecast of an open weather service, where the operator has turned it on: fetched, checked, kept, and written
// into the book as expectations. Being offline is normal here: nothing is said of it, the last good one serves on.
export { type Forecasts, forecasts } from './forecasts.ts';
export { serviceOf, type WeatherService } from './service.ts';
