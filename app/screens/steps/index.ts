/** All steps of measuring on one page, and typing them in from a sheet: fetched together, as one leads to the other. */
export { StepsScreen } from './steps';
export { TypedScreen } from './typed';
