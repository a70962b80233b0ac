import { useEffect, useRef, useState } from 'preact/hooks';
import { Page, useWords } from '../../parts';
import { bring } from '../shared/arrivals';
import { go, to } from '../shared/route';
import { noteHappening } from '../shared/trouble/happened';
import { pixelsOf } from './unpack';
import './incoming.css';

/** Long side a camera frame is read at, pixels; and the pause between two frames, ms. */
const SIDE = 1000;
const PAUSE_MS = 80;

/** Reads a QR with the camera, on any phone: the decoder is our own. Stops the camera when it is left. */
export function ScanScreen() {
  const { say } = useWords();
  const video = useRef<HTMLVideoElement>(null);
  const [wrong, setWrong] = useState(false);
  useEffect(() => {
    const stop = new AbortController();
    scan(video.current, stop.signal).then(
      (link) => link && bring([link]),
      (error) => {
        noteHappening(error);
        setWrong(true);
      },
    );
    return () => stop.abort();
  }, []);
  return (
    <Page
      title={say('screen.card.scan')}
      back={to('card')}
      acts={
        <button type="button" class="plain" onClick={() => go(to('card'))}>
          {say('screen.cancel')}
        </button>
      }
    >
      {wrong ? (
        <p class="slip warn" role="alert">
          {say('screen.card.no-camera')}
        </p>
      ) : (
        <p>{say('screen.card.aim')}</p>
      )}
      <video ref={video} class="scan-view" muted playsInline aria-label={say('screen.card.camera')} />
    </Page>
  );
}

/** The first card's link that the camera sees; null when stopped before. Throws where there is no camera for us. */
async function scan(video: HTMLVideoElement | null, signal: AbortSignal): Promise<string | null> {
  const [camera, sharing] = await Promise.all([openCamera(), import('../../sharing')]);
  const { readFrame } = await sharing.loadQrReader();
  try {
    if (!video) return null;
    video.srcObject = camera;
    await video.play();
    for (let turn = 0; !signal.aborted; turn++) {
      const pixels = pixelsOf(video, video.videoWidth, video.videoHeight, SIDE);
      const text = pixels && readFrame(pixels, turn);
      if (text && sharing.carriesCard(text)) return text;
      await new Promise((resume) => setTimeout(resume, PAUSE_MS));
    }
    return null;
  } finally {
    for (const track of camera.getTracks()) track.stop();
  }
}

const openCamera = () =>
  navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment', width: { ideal: 1280 } } });
