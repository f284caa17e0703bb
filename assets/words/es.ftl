# Español, como se escribe en América Latina y en los Estados Unidos. Sólo frases; lo que dicen se calcula en otra parte.
