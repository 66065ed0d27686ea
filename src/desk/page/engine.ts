import {
	BooleanNumber,
	LocaleType,
	LogLevel,
	mergeLocales,
	type Plugin,
	type PluginCtor,
	Univer,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FunctionType } from "@univerjs/engine-formula";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import conditionalTexts from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreTexts from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationTexts from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteTexts from "@univerjs/preset-sheets-note/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import type { Engine, EngineFunction } from "../contract";
import type { FunctionHelp } from "./help";

export interface Grid {
	/** Id of the element it is drawn into. */
	container: string;
	help: ReadonlyMap<string, FunctionHelp>;
}

/** What the grid says about a function while its formula is typed. */
function described(name: string, help: FunctionHelp | undefined) {
	const about = help?.about ?? "A function of the add-on";
	return {
		functionName: name,
		functionType: FunctionType.User,
		description: about,
		abstract: about,
		functionParameter: (help?.params ?? []).map((param) => ({
			...param,
			require: BooleanNumber.TRUE,
			repeat: BooleanNumber.FALSE,
		})),
	};
}

function presets(functions: EngineFunction[], { container, help }: Grid) {
	return [
		UniverSheetsCorePreset({
			container,
			toolbar: false,
			ribbonType: "simple",
			footer: { zoomSlider: false, menus: false },
			// lengths are kept as text, so that 3/4 is not April: no reason to mark them
			disableTextFormatAlert: true,
			disableTextFormatMark: true,
			sheets: {
				protectedRangeShadow: false,
				disableForceStringAlert: true,
				disableForceStringMark: true,
			},
			formula: {
				function: functions,
				description: functions.map(([, name]) =>
					described(name, help.get(name)),
				),
			},
		}),
		UniverSheetsDataValidationPreset({
			showEditOnDropdown: false,
			showSearchOnDropdown: false,
		}),
		UniverSheetsConditionalFormattingPreset(),
		UniverSheetsNotePreset(),
	];
}

/** Registers each plugin once, with the settings of the last preset that names it. */
function register(univer: Univer, parts: ReturnType<typeof presets>): void {
	const plugins = new Map<string, [PluginCtor<Plugin>, unknown]>();
	for (const plugin of parts.flatMap((part) => part.plugins)) {
		const [type, settings] = Array.isArray(plugin) ? plugin : [plugin];
		plugins.delete(type.pluginName);
		plugins.set(type.pluginName, [type, settings]);
	}
	univer.registerPlugins([...plugins.values()]);
}

/** Univer with its grid. */
export function startPageEngine(
	functions: EngineFunction[],
	grid: Grid,
): Engine {
	const univer = new Univer({
		locale: LocaleType.EN_US,
		locales: {
			[LocaleType.EN_US]: mergeLocales(
				coreTexts,
				validationTexts,
				conditionalTexts,
				noteTexts,
			),
		},
		logLevel: LogLevel.WARN,
	});
	register(univer, presets(functions, grid));
	return {
		univer,
		api: FUniver.newAPI(univer),
		dispose: () => univer.dispose(),
	};
}
