// The camera's picture while a label is looked for in it. Nothing of the picture is kept or sent.

import { useEffect, useRef, useState } from 'react';
import { words } from '../../words/words.ts';
import styles from './label-scan.module.css';

/** The part of the browser's own code reader that is used here; TypeScript does not know it yet. */
interface CodeReader {
  detect(picture: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
declare const BarcodeDetector: new (options: { readonly formats: readonly string[] }) => CodeReader;

/** Milliseconds between two looks at the picture. House rule: quick to the eye, easy on the battery. */
const msBetweenLooks = 200;

export function LabelScan({ onRead }: { readonly onRead: (text: string) => string | null }) {
  const text = words.setTheGauge;
  const picture = useRef<HTMLVideoElement>(null);
  const [said, setSaid] = useState<string>(text.scanning);
  const read = useRef(onRead);
  useEffect(() => {
    read.current = onRead;
  }, [onRead]);
  useEffect(() => {
    let isOver = false;
    let camera: MediaStream | null = null;
    const look = async (): Promise<void> => {
      const video = picture.current;
      camera = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
      if (isOver || video === null) return;
      video.srcObject = camera;
      await video.play();
      const reader = new BarcodeDetector({ formats: ['qr_code'] });
      while (!isOver) {
        const [code] = await reader.detect(video);
        if (isOver) break;
        const wrong = code === undefined ? undefined : read.current(code.rawValue);
        if (wrong === null) return;
        if (wrong !== undefined) setSaid(wrong);
        await new Promise((resolve) => setTimeout(resolve, msBetweenLooks));
      }
    };
    const letGo = () => {
      for (const track of camera?.getTracks() ?? []) track.stop();
    };
    look()
      .catch((error: unknown) => {
        if (isOver) return;
        const isForbidden = error instanceof DOMException && error.name === 'NotAllowedError';
        setSaid(isForbidden ? words.setTheGauge.cameraForbidden : words.setTheGauge.noCamera);
      })
      .finally(() => {
        if (isOver) letGo();
      });
    return () => {
      isOver = true;
      letGo();
    };
  }, []);
  return (
    <div className={styles.scan}>
      <video ref={picture} className={styles.picture} muted playsInline aria-label={text.scanPicture} />
      <p role="status">{said}</p>
    </div>
  );
}
