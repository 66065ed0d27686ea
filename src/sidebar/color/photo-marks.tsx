/** A photo with corners to mark: by the pointer, or with arrow keys under a magnifier. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Corners, Pixels, Point } from "../../calc/photoarea";

/** A photo as the page has drawn it: nothing of it leaves the page. */
export interface Photo extends Pixels {
	name: string;
	canvas: HTMLCanvasElement;
}

/** Corners of one thing in the photo. */
export interface Mark {
	name: string;
	corners: Corners;
}

/** Larger photos are made smaller: a patch has pixels enough by far. */
const MOST_PIXELS = 1600;

/** Decodes a file that a person chose. @throws Error for one that is no picture. */
export async function decodePhoto(file: File): Promise<Photo> {
	const address = await new Promise<string>((done, failed) => {
		const reader = new FileReader();
		reader.onload = () => done(String(reader.result));
		reader.onerror = () => failed(new Error("The file cannot be read."));
		reader.readAsDataURL(file);
	});
	const image = new Image();
	await new Promise<void>((done, failed) => {
		image.onload = () => done();
		image.onerror = () =>
			failed(new Error("This browser cannot read the file as a picture."));
		image.src = address;
	});
	const scale = Math.min(1, MOST_PIXELS / Math.max(image.width, image.height));
	const canvas = document.createElement("canvas");
	canvas.width = Math.round(image.width * scale);
	canvas.height = Math.round(image.height * scale);
	const context = canvas.getContext("2d", { willReadFrequently: true });
	if (!context) throw new Error("This browser cannot draw the picture.");
	context.drawImage(image, 0, 0, canvas.width, canvas.height);
	const { data, width, height } = context.getImageData(
		0,
		0,
		canvas.width,
		canvas.height,
	);
	return { name: file.name, canvas, data, width, height };
}

const PLACES = ["top left", "top right", "bottom right", "bottom left"];
const ARROWS = new Map<string, Point>([
	["ArrowLeft", { x: -1, y: 0 }],
	["ArrowRight", { x: 1, y: 0 }],
	["ArrowUp", { x: 0, y: -1 }],
	["ArrowDown", { x: 0, y: 1 }],
]);
/** Pixels that an arrow moves a corner by with Shift held. */
const FAST = 20;

interface Props {
	photo: Photo;
	marks: readonly Mark[];
	move(mark: number, corner: number, to: Point): void;
}

export function PhotoMarks({ photo, marks, move }: Props) {
	const { width, height, canvas } = photo;
	const shown = useRef<HTMLCanvasElement>(null);
	const [held, setHeld] = useState({ mark: 0, corner: 0 });
	const dragged = useRef(false);
	useEffect(() => {
		shown.current?.getContext("2d")?.drawImage(canvas, 0, 0);
	}, [canvas]);
	const within = ({ x, y }: Point): Point => ({
		x: Math.min(width, Math.max(0, x)),
		y: Math.min(height, Math.max(0, y)),
	});
	const pointAt = (event: PointerEvent): Point => {
		const box = shown.current?.getBoundingClientRect();
		return within({
			x: ((event.clientX - (box?.left ?? 0)) * width) / (box?.width || 1),
			y: ((event.clientY - (box?.top ?? 0)) * height) / (box?.height || 1),
		});
	};
	const inView = marks[held.mark]?.corners[held.corner];
	return (
		<>
			<div class="photo-marks">
				<canvas
					ref={shown}
					width={width}
					height={height}
					role="img"
					aria-label={`The photo ${photo.name}, ${width} by ${height} pixels`}
				/>
				<svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
					{marks.map(({ name, corners }) => (
						<polygon
							key={name}
							points={corners.map(({ x, y }) => `${x},${y}`).join(" ")}
						/>
					))}
				</svg>
				{marks.map(({ name, corners }, mark) =>
					corners.map(({ x, y }, corner) => (
						<button
							key={`${name} ${PLACES[corner]}`}
							type="button"
							class="corner"
							style={{
								left: `${(100 * x) / width}%`,
								top: `${(100 * y) / height}%`,
							}}
							aria-label={`${name}, ${PLACES[corner]}: ${Math.round(x)}, ${Math.round(y)}`}
							aria-describedby="photo-keys"
							onFocus={() => setHeld({ mark, corner })}
							onKeyDown={(event) => {
								const step = ARROWS.get(event.key);
								if (!step) return;
								event.preventDefault();
								const by = event.shiftKey ? FAST : 1;
								move(
									mark,
									corner,
									within({ x: x + step.x * by, y: y + step.y * by }),
								);
							}}
							onPointerDown={(event) => {
								dragged.current = true;
								event.currentTarget.setPointerCapture(event.pointerId);
							}}
							onPointerMove={(event) =>
								dragged.current && move(mark, corner, pointAt(event))
							}
							onPointerUp={() => {
								dragged.current = false;
							}}
						/>
					)),
				)}
			</div>
			{inView && <Magnifier photo={photo} at={inView} />}
			<p class="hint" id="photo-keys">
				Drag each corner, or move it with the arrow keys; with Shift in steps of{" "}
				{FAST}.
			</p>
		</>
	);
}

const [GLASS, SEEN] = [96, 24];

/** The pixels around a corner, four times as large, a cross at the corner. */
function Magnifier({ photo, at: { x, y } }: { photo: Photo; at: Point }) {
	const glass = useRef<HTMLCanvasElement>(null);
	useEffect(() => {
		const context = glass.current?.getContext("2d");
		if (!context) return;
		context.imageSmoothingEnabled = false;
		context.fillStyle = "#808080";
		context.fillRect(0, 0, GLASS, GLASS);
		context.drawImage(
			photo.canvas,
			x - SEEN / 2,
			y - SEEN / 2,
			SEEN,
			SEEN,
			0,
			0,
			GLASS,
			GLASS,
		);
		for (const [color, wide] of [
			["#ffffff", 3],
			["#000000", 1],
		] as const) {
			context.strokeStyle = color;
			context.lineWidth = wide;
			context.beginPath();
			context.moveTo(GLASS / 2, GLASS / 4);
			context.lineTo(GLASS / 2, (3 * GLASS) / 4);
			context.moveTo(GLASS / 4, GLASS / 2);
			context.lineTo((3 * GLASS) / 4, GLASS / 2);
			context.stroke();
		}
	}, [photo, x, y]);
	return (
		<canvas
			ref={glass}
			class="magnifier"
			width={GLASS}
			height={GLASS}
			role="img"
			aria-label="Around the corner, four times as large"
		/>
	);
}
