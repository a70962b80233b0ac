/** The first page: puts the app on the screen, then sees that it opens without a network next time. */
import { render } from 'preact';
import { keepOffline } from './work/keep-offline';

const place = document.getElementById('app');
if (place) render(<main>Hemling</main>, place);

if (import.meta.env.PROD) keepOffline(() => undefined);
