/** A photo by the camera: seen before it is sent, made smaller, and drawn anew, so that nothing of the camera stays in it. */
import { useEffect, useState } from 'preact/hooks';
import type { Part } from '../../../engine/index.ts';

/** Pixels of the longer side, and the quality of the JPEG: marks on a terminal can be read, some 300 kB on the way. */
const [LONGEST, QUALITY] = [1600, 0.8];

/** Throws where the browser can't read the picture. */
async function smaller(file: Blob): Promise<Blob> {
  const image = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, LONGEST / Math.max(image.width, image.height));
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [Math.round(image.width * scale), Math.round(image.height * scale)];
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  return new Promise((resolve, reject) =>
    canvas.toBlob((made) => (made ? resolve(made) : reject(new Error('no picture'))), 'image/jpeg', QUALITY),
  );
}

interface PhotoProps {
  readonly part: Extract<Part, { kind: 'photo' }>;
  readonly name: string;
  readonly photo: Blob | null;
  readonly wrong: boolean;
  readonly describedBy: string | undefined;
  readonly onPhoto: (photo: Blob | null) => void;
}

export function PhotoPart({ part, name, photo, wrong, describedBy, onPhoto }: PhotoProps) {
  const id = `${name}-${part.key}`;
  const [unread, setUnread] = useState(false);
  const address = useAddress(photo);
  const take = async (file: Blob): Promise<void> => {
    const made = await smaller(file).catch(() => null);
    setUnread(made === null);
    if (made) onPhoto(made);
  };
  return (
    <div class="photo" data-wrong={wrong}>
      {address && <img src={address} alt={`${part.ask}, as it will be sent`} />}
      <div class="row">
        <label class="key" for={id}>
          {photo ? 'Another' : part.ask}
          {!photo && part.optional && <small> may be left out</small>}
        </label>
        <input
          id={id}
          class="unseen"
          type="file"
          accept="image/*"
          capture="environment"
          aria-invalid={wrong}
          aria-describedby={wrong ? describedBy : undefined}
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            // The same file chosen again is a choice as well.
            event.currentTarget.value = '';
            if (file) void take(file);
          }}
        />
        {photo && (
          <button type="button" class="key" onClick={() => onPhoto(null)}>
            Remove
          </button>
        )}
      </div>
      {unread && <p role="alert">This picture can’t be read here. Take it again, or note what it shows.</p>}
    </div>
  );
}

/** Where the browser shows a picture that is only on this phone. */
function useAddress(photo: Blob | null): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (!photo) return setAddress(null);
    const made = URL.createObjectURL(photo);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [photo]);
  return address;
}
