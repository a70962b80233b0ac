/** Cloth is data on the ground floor: what is judged of a body depends on it too. */
export { type Cloth, cloths, GATHERS_UP_TO_MM, THICK_FROM_MM, USUAL_CLOTH } from '../../body';
