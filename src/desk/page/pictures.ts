/** Pictures of the open tab, laid over the grid where their cells are. */
import type { Worksheet } from "@univerjs/core";
import {
	IRenderManagerService,
	SHEET_VIEWPORT_KEY,
	SheetSkeletonManagerService,
} from "@univerjs/preset-sheets-core";
import type { Desk, PictureNote } from "../contract";
import { partOf } from "../engine-private";
import { element } from "./elements";
import { onCalculated, onTabOpened, soonOnce } from "./events";

/** A way along one side of the grid, in pixels of the page. */
interface Way {
	start: number;
	/** Where the part that moves begins: behind headings and frozen cells. */
	edge: number;
}

/** Where cells of the open tab are drawn, and how large. */
interface Grid {
	scale: number;
	left: Way;
	top: Way;
	at(note: PictureNote): { x: number; y: number };
}

function gridOf(desk: Desk, sheet: Worksheet): Grid | undefined {
	const render = partOf(desk.engine, IRenderManagerService).getRenderById(
		sheet.getUnitId(),
	);
	const skeleton = render
		?.with(SheetSkeletonManagerService)
		.getCurrentSkeleton();
	const view = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
	const canvas = document.querySelector("#grid canvas[id^='univer-sheet']");
	if (!render || !skeleton || !view || !canvas) return undefined;
	const { scaleX: scale } = render.scene.getAncestorScale();
	const { xSplit, ySplit } = sheet.getFreeze();
	const corner = canvas.getBoundingClientRect();
	const place = element("grid").getBoundingClientRect();
	return {
		scale,
		left: { start: corner.left - place.left, edge: view.left * scale },
		top: { start: corner.top - place.top, edge: view.top * scale },
		at({ row, column, x, y }) {
			const cell = skeleton.getNoMergeCellWithCoordByIndex(row - 1, column - 1);
			const scrolledX = column > xSplit ? view.viewportScrollX : 0;
			const scrolledY = row > ySplit ? view.viewportScrollY : 0;
			return {
				x: (cell.startX + x - scrolledX) * scale,
				y: (cell.startY + y - scrolledY) * scale,
			};
		},
	};
}

/** The picture as an image of a page. */
export function imageOf(note: PictureNote): HTMLImageElement {
	const image = document.createElement("img");
	image.src = note.source;
	image.alt = note.title;
	return image;
}

function laidOver(grid: Grid, note: PictureNote): HTMLImageElement {
	const image = imageOf(note);
	const { x, y } = grid.at(note);
	const hiddenLeft = Math.max(0, grid.left.edge - x);
	const hiddenTop = Math.max(0, grid.top.edge - y);
	Object.assign(image.style, {
		left: `${grid.left.start + x}px`,
		top: `${grid.top.start + y}px`,
		width: `${note.width * grid.scale}px`,
		height: `${note.height * grid.scale}px`,
		clipPath: `inset(${hiddenTop}px 0 0 ${hiddenLeft}px)`,
	});
	return image;
}

/** Keeps the pictures of the open tab over their cells. */
export function keepPicturesShown(desk: Desk): void {
	const { api } = desk.engine;
	const place = document.createElement("div");
	place.id = "pictures";
	element("grid").append(place);
	const show = () => {
		const sheet = api.getActiveWorkbook()?.getActiveSheet().getSheet();
		const notes = sheet ? desk.pictures(sheet.getName()) : [];
		const grid = sheet && notes.length > 0 ? gridOf(desk, sheet) : undefined;
		place.replaceChildren(
			...(grid ? notes.map((note) => laidOver(grid, note)) : []),
		);
	};
	const soon = soonOnce(show, 50);
	onCalculated(desk, soon);
	onTabOpened(desk, soon);
	for (const event of [
		api.Event.Scroll,
		api.Event.SheetZoomChanged,
		api.Event.SheetSkeletonChanged,
	] as const)
		api.addEvent(event, soon);
	window.addEventListener("resize", soon);
	desk.onCalled(soon);
	show();
}
