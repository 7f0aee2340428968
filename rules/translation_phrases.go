package rules

import "fmt"

// phrase is one of the engine's own phrases in this language.
func (t *Translation) phrase(english string) string {
	if t == nil {
		return english
	}
	return orElse(t.phrases[english], english)
}

func (t *Translation) phrasef(english string, args ...any) string {
	return fmt.Sprintf(t.phrase(english), args...)
}

// In is the verdict's word in a language.
func (v Verdict) In(language string) string {
	return orElse(phrasesOf(language)[v.String()], v.String())
}

func phrasesOf(language string) map[string]string {
	if language == "es" {
		return spanishPhrases
	}
	return nil
}

// spanishPhrases are the phrases that the engine puts together itself, by the
// English ones.
var spanishPhrases = map[string]string{
	"go": "adelante", "caution": "precaución", "stop": "alto", "waiting": "pendiente", "not needed": "no aplica",

	"yes": "sí", "no": "no", "not known": "no se sabe",
	"%d points":                "%d puntos",
	"%s: %q could be: %s":      "%s: %q puede ser: %s",
	"%s: %q: answer yes or no": "%s: %q: conteste sí o no",
	"%s: %q is not one of: %s": "%s: %q no es una de estas: %s",
	"%s: %q: one measured value is asked for, not limits":                   "%s: %q: se pide un valor medido, no límites",
	"%s: %s is counted in whole numbers":                                    "%s: %s se cuenta en números enteros",
	"%s: not a finite number":                                               "%s: no es un número",
	"%s: %s is under the least that makes sense here, %s; look at it again": "%s: %s es menos de lo que aquí tiene sentido, %s; véalo otra vez",
	"%s: %s is over the most that makes sense here, %s; look at it again":   "%s: %s es más de lo que aquí tiene sentido, %s; véalo otra vez",
	"%s: %s is outside what makes sense here, %s to %s; look at it again":   "%s: %s está fuera de lo que aquí tiene sentido, de %s a %s; véalo otra vez",
	"not understood":                         "no se entiende",
	"no number found":                        "no hay número",
	"nothing written":                        "no hay nada escrito",
	"no unit":                                "falta la unidad",
	"not a number":                           "no es un número",
	"not a finite number":                    "no es un número",
	"not readable text":                      "no se puede leer",
	"too long for one measurement":           "es muy largo para una sola medida",
	"too many parts":                         "son demasiadas partes",
	"limits need both signs":                 "los límites llevan los dos signos",
	"limits cannot be read":                  "no se pueden leer los límites",
	"the lower limit is above the upper":     "el límite inferior está arriba del superior",
	"size and limits are in different units": "la medida y los límites están en unidades distintas",
	"a decimal and a fraction together":      "hay decimal y fracción juntos",
	"the fraction is one or more":            "la fracción es uno o más",
	"the fraction cannot be read":            "no se puede leer la fracción",
	"division by zero":                       "división entre cero",
	"colder than absolute zero":              "más frío que el cero absoluto",
	"the comma could be a decimal mark or a thousands mark":   "la coma puede ser decimal o de miles",
	"write 1250 or 1,250 for thousands and 1.25 for decimals": "escriba 1250 o 1,250 para miles y 1.25 para decimales",
	"what stands after ± must be more than zero":              "lo que va después de ± debe ser más que cero",
	"write them like 3.000 +.002/-.000":                       "escríbalos como 3.000 +.002/-.000",
	"write it like %s":                                        "escríbalo como %s",
	"write 3-1/8 or 3.125":                                    "escriba 3-1/8 o 3.125",
	" to spare":                                               " de sobra",
	" too much":                                               " de más",
	" too little":                                             " de menos",
	"exactly at the limit":                                    "justo en el límite",
	"cannot be worked out: %s":                                "no se puede calcular: %s",
	"waits for %s":                                            "falta %s",
	"holds":                                                   "se cumple",
	"does not hold":                                           "no se cumple",
	" and ":                                                   " y ",
	" or ":                                                    " o ",
	"not ":                                                    "contrario de ",
	" if ":                                                    " si ",
	", else ":                                                 ", si no ",
	" is given":                                               " está dado",
	"go if %s is %s":                                          "adelante si %s es %s",
	"no %s from %s to %s makes this go":                       "ningún valor de %s entre %s y %s lo pone en adelante",
	"at most %s":                                              "%s o menos",
	"at least %s":                                             "%s o más",
	"from %s to %s":                                           "de %s a %s",

	"Too close to call: %s to spare, but that is only sure to ±%s. %s%s makes %.0f %% of the doubt": "Demasiado justo para decidir: sobra %s, pero eso solo es seguro a ±%s. %s%s pone el %.0f %% de la duda",
	" (%s)": " (%s)",
	"; no single better instrument settles it, so move away from the limit.": "; ningún instrumento mejor lo resuelve por sí solo, así que aléjese del límite.",
	"; take it with the %s to settle it.":                                    "; mídalo con %s para salir de la duda.",

	"tape": "cinta métrica", "rule": "regla", "calipers": "vernier", "depth gauge": "medidor de profundidad", "feeler gauge": "lainas (calibrador de hojas)",
	"fillet gauge": "calibrador de filete", "outside micrometer": "micrómetro de exteriores", "inside micrometer": "micrómetro de interiores",
	"bore gauge": "alesómetro", "dial indicator": "indicador de carátula", "test indicator": "indicador de palanca",
	"ultrasonic thickness gauge": "medidor ultrasónico de espesor", "protractor": "transportador", "level": "nivel de precisión",
	"floor scale": "báscula de piso", "load cell": "celda de carga", "worked out": "cálculo", "drawing": "plano", "guess": "tanteo", "thermometer": "termómetro de contacto",
	"temperature stick": "crayón térmico", "infrared thermometer": "termómetro infrarrojo", "pressure gauge": "manómetro",
	"torque wrench": "torquímetro", "clamp meter": "amperímetro de gancho", "voltmeter": "voltímetro", "stopwatch": "cronómetro", "by eye": "a ojo",
}
