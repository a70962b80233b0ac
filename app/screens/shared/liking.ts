import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { type Liking, likingFrom } from './defaults';

export const LikingContext = createContext<Liking>(likingFrom({}, ['en']));

/** How the app is set: unit, language, theme, paper. */
export const useLiking = (): Liking => useContext(LikingContext);
