const SCOPES = [
	"https://www.googleapis.com/auth/script.container.ui",
	"https://www.googleapis.com/auth/spreadsheets.currentonly",
];

/** Complaints of the manifest: the two scopes and no more, an editor add-on, the current runtime, no log of errors. */
export function manifestComplaints(json: string): string[] {
	const manifest = JSON.parse(json);
	const scopes = [...(manifest.oauthScopes ?? [])].sort().join(" ");
	const beyond = ["addOns", "dependencies", "urlFetchWhitelist", "webapp"]
		.filter((field) => field in manifest)
		.map((field) => `appsscript.json has ${field}`);
	return [
		...(scopes === SCOPES.join(" ")
			? []
			: [`appsscript.json asks for ${scopes || "no scope"}`]),
		...(manifest.runtimeVersion === "V8"
			? []
			: ["appsscript.json is not for V8"]),
		// Uncaught errors would go to the script's own project, and ours say what stands in a cell.
		...(manifest.exceptionLogging === "NONE"
			? []
			: ["appsscript.json lets uncaught errors be logged"]),
		...beyond,
	];
}
