<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_US" sourcelanguage="en_US">
<context>
    <name>ActBar</name>
    <message>
        <source>Initial as %1, %2</source>
        <translation>Iniciales: %1, %2</translation>
    </message>
    <message>
        <source>Initial it</source>
        <translation>Poner iniciales</translation>
    </message>
    <message>
        <source>Return with a question</source>
        <translation>Devolver con una pregunta</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>More decisions</source>
        <translation>Más decisiones</translation>
    </message>
    <message>
        <source>File elsewhere</source>
        <translation>Archivar en otra</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Anular</translation>
    </message>
</context>
<context>
    <name>AmendForm</name>
    <message>
        <source>Change the sheet</source>
        <translation>Cambiar la hoja</translation>
    </message>
    <message>
        <source>What the preceptor signed stays on the record beside it.</source>
        <translation>Lo que firmó el preceptor queda al lado en el registro.</translation>
    </message>
    <message>
        <source>Procedures, with semicolons between</source>
        <translation>Procedimientos, separados por punto y coma</translation>
    </message>
    <message>
        <source>Date, as 2026-03-12</source>
        <translation>Fecha, como 2026-03-12</translation>
    </message>
    <message>
        <source>Surgeon</source>
        <translation>Cirujano</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Canceled before incision</source>
        <translation>Cancelado antes de la incisión</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Lo que cambia</translation>
    </message>
    <message>
        <source>Why? It stays beside the sheet for good.</source>
        <translation>¿Por qué? Queda al lado de la hoja para siempre.</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarla como está</translation>
    </message>
    <message>
        <source>What was imported stays on the record beside it.</source>
        <translation>Lo que se importó queda al lado en el registro.</translation>
    </message>
</context>
<context>
    <name>AnswerPage</name>
    <message>
        <source>Signed by %1</source>
        <translation>Firmado por %1</translation>
    </message>
    <message>
        <source>Show this to the student&apos;s phone</source>
        <translation>Muestre esto al teléfono del estudiante</translation>
    </message>
    <message>
        <source>Send this to the student&apos;s phone</source>
        <translation>Envíe esto al teléfono del estudiante</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Code of your signature</source>
        <translation>Código de su firma</translation>
    </message>
    <message>
        <source>What you signed has too much text for one code. Send it as a file: it works the same.</source>
        <translation>Lo que firmó tiene demasiado texto para un solo código. Envíelo como archivo: sirve igual.</translation>
    </message>
    <message>
        <source>On the student&apos;s phone: I signed on my phone. The sheet is signed once that phone has taken this in.</source>
        <translation>En el teléfono del estudiante: Firmé en mi teléfono. La hoja queda firmada cuando ese teléfono haya recibido esto.</translation>
    </message>
    <message>
        <source>Send it as a file instead</source>
        <translation>Enviarlo como archivo</translation>
    </message>
    <message>
        <source>Send it as a file</source>
        <translation>Enviarlo como archivo</translation>
    </message>
    <message>
        <source>What you signed</source>
        <translation>Lo que firmó</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>AsidePage</name>
    <message>
        <source>What does not count yet</source>
        <translation>Lo que todavía no cuenta</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>All of this is kept and seen by everybody. Look into it with the student, and admit what is right, each with a reason.</source>
        <translation>Todo esto se guarda y lo ven todos. Revíselo con el estudiante y admita lo que sea correcto, cada cosa con un motivo.</translation>
    </message>
    <message>
        <source>Everything that came in counts, or was refused. There is nothing to admit.</source>
        <translation>Todo lo que llegó cuenta o se rechazó. No hay nada que admitir.</translation>
    </message>
    <message>
        <source>It cannot be admitted: whoever may, makes it again.</source>
        <translation>No se puede admitir: quien puede hacerlo lo hace de nuevo.</translation>
    </message>
    <message>
        <source>Let it count</source>
        <translation>Que cuente</translation>
    </message>
    <message>
        <source>Why does it count? The reason stays in the record for good.</source>
        <translation>¿Por qué cuenta? El motivo queda para siempre en el registro.</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n más</numerusform>
            <numerusform>%n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BesideTable</name>
    <message>
        <source>Signed sheet</source>
        <translation>Hoja firmada</translation>
    </message>
    <message>
        <source>Log entry</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>signed: %1; logged: %2</source>
        <translation>firmado: %1; registrado: %2</translation>
    </message>
    <message>
        <source>(differs)</source>
        <translation>(difiere)</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Firmado: %1</translation>
    </message>
    <message>
        <source>Logged: %1 (differs)</source>
        <translation>Registrado: %1 (difiere)</translation>
    </message>
    <message>
        <source>Logged: %1</source>
        <translation>Registrado: %1</translation>
    </message>
</context>
<context>
    <name>BoardCard</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>being counted</source>
        <translation>se está contando</translation>
    </message>
    <message>
        <source>nothing waits</source>
        <translation>nada espera</translation>
    </message>
    <message numerus="yes">
        <source>%n wait(s)</source>
        <translation>
            <numerusform>espera %n</numerusform>
            <numerusform>esperan %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to check</source>
        <translation>
            <numerusform>%n por revisar</numerusform>
            <numerusform>%n por revisar</numerusform>
        </translation>
    </message>
    <message>
        <source>last sheet %1</source>
        <translation>última hoja: %1</translation>
    </message>
</context>
<context>
    <name>CardMadePage</name>
    <message>
        <source>The signing card, shown only now</source>
        <translation>La tarjeta de firma; solo se muestra ahora</translation>
    </message>
    <message>
        <source>Code of the new signing card</source>
        <translation>Código de la nueva tarjeta de firma</translation>
    </message>
    <message>
        <source>To be typed where there is no camera.</source>
        <translation>Para escribirlo donde no haya cámara.</translation>
    </message>
    <message>
        <source>It is vouched for. Let the preceptor photograph it, or print it. Never write the PIN on it.</source>
        <translation>Está avalada. Deje que el preceptor la fotografíe o imprímala. No escriba nunca el PIN en ella.</translation>
    </message>
    <message>
        <source>Nobody vouches for it yet. The preceptor chooses the PIN when they first sign with it; then it waits here for you to vouch.</source>
        <translation>Nadie la avala todavía. El preceptor elige el PIN al firmar con ella por primera vez; después espera aquí su aval.</translation>
    </message>
    <message>
        <source>Print it: save it as PDF</source>
        <translation>Imprimirla: guardar como PDF</translation>
    </message>
    <message>
        <source>Saved as %1. Print it and delete the file.</source>
        <translation>Guardado como %1. Imprímalo y borre el archivo.</translation>
    </message>
    <message>
        <source>The preceptor has it</source>
        <translation>El preceptor la tiene</translation>
    </message>
</context>
<context>
    <name>CardPage</name>
    <message>
        <source>Another signing card</source>
        <translation>Otra tarjeta de firma</translation>
    </message>
    <message>
        <source>A new signing card</source>
        <translation>Una tarjeta de firma nueva</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Name of the preceptor</source>
        <translation>Nombre del preceptor</translation>
    </message>
    <message>
        <source>Credential, such as CST or RN</source>
        <translation>Credencial, por ejemplo CST o RN</translation>
    </message>
    <message>
        <source>Site where they work</source>
        <translation>Sede donde trabaja</translation>
    </message>
    <message>
        <source>The preceptor is here and chooses the PIN now</source>
        <translation>El preceptor está aquí y elige el PIN ahora</translation>
    </message>
    <message>
        <source>The card counts at once.</source>
        <translation>La tarjeta cuenta enseguida.</translation>
    </message>
    <message>
        <source>The PIN is chosen at the first signature; what the card signs counts once you vouch for it then.</source>
        <translation>El PIN se elige con la primera firma; lo que firme la tarjeta cuenta cuando usted la avale después.</translation>
    </message>
    <message>
        <source>Give the device to the preceptor for the PIN: only they may know it.</source>
        <translation>Dé el equipo al preceptor para el PIN: solo el preceptor debe conocerlo.</translation>
    </message>
    <message>
        <source>PIN, 6 to 12 digits</source>
        <translation>PIN, de 6 a 12 dígitos</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Lo mismo otra vez</translation>
    </message>
    <message>
        <source>Making the card</source>
        <translation>Creando la tarjeta</translation>
    </message>
    <message>
        <source>Make the card</source>
        <translation>Crear la tarjeta</translation>
    </message>
</context>
<context>
    <name>CardWays</name>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Scan again</source>
        <translation>Escanear otra vez</translation>
    </message>
    <message>
        <source>Scan my signing card</source>
        <translation>Escanear mi tarjeta de firma</translation>
    </message>
    <message>
        <source>A picture of my signing card</source>
        <translation>Una imagen de mi tarjeta de firma</translation>
    </message>
    <message>
        <source>Type the code of my signing card</source>
        <translation>Escribir el código de mi tarjeta de firma</translation>
    </message>
    <message>
        <source>The code printed on the card, 7 groups of 5</source>
        <translation>El código impreso en la tarjeta, 7 grupos de 5</translation>
    </message>
    <message>
        <source>Use this card</source>
        <translation>Usar esta tarjeta</translation>
    </message>
    <message>
        <source>I have no signing card: make one now</source>
        <translation>No tengo tarjeta de firma: crear una ahora</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Your credential, such as CST or RN</source>
        <translation>Su credencial, como CST o RN</translation>
    </message>
    <message>
        <source>Make my card</source>
        <translation>Crear mi tarjeta</translation>
    </message>
    <message>
        <source>Draw my signature</source>
        <translation>Dibujar mi firma</translation>
    </message>
    <message>
        <source>Demo: hold one of these cards before the camera</source>
        <translation>Demo: ponga una de estas tarjetas frente a la cámara</translation>
    </message>
</context>
<context>
    <name>CheckPlace</name>
    <message>
        <source>All that wait</source>
        <translation>Todas las que esperan</translation>
    </message>
    <message>
        <source>Choose a sheet, or press J for the first one. J and K or the arrows go on and back; the letters beside the buttons decide.</source>
        <translation>Elija una hoja, o pulse J para la primera. J y K o las flechas avanzan y retroceden; las letras junto a los botones deciden.</translation>
    </message>
</context>
<context>
    <name>CheckWords</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; was signed, &quot;%3&quot; is in the log.</source>
        <translation>%1: se firmó «%2», el registro dice «%3».</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Surgeon</source>
        <translation>Cirujano</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>The log says that the case was canceled.</source>
        <translation>El registro dice que el caso se canceló.</translation>
    </message>
    <message>
        <source>It was signed as canceled; the log says it was not.</source>
        <translation>Se firmó como cancelado; el registro dice que no lo fue.</translation>
    </message>
    <message>
        <source>The preceptor says that a signature on it is not theirs.</source>
        <translation>El preceptor dice que una firma en ella no es suya.</translation>
    </message>
    <message>
        <source>The student asks for a review of &quot;%1&quot;.</source>
        <translation>El estudiante pide una revisión de «%1».</translation>
    </message>
    <message>
        <source>Two signers differ on &quot;%1&quot;.</source>
        <translation>Dos firmantes difieren en «%1».</translation>
    </message>
    <message>
        <source>The student changed the sheet after it was signed.</source>
        <translation>El estudiante cambió la hoja después de la firma.</translation>
    </message>
    <message>
        <source>Something came after it was initialed.</source>
        <translation>Llegó algo después de las iniciales.</translation>
    </message>
    <message>
        <source>The student asks to take it back.</source>
        <translation>El estudiante pide retirarla.</translation>
    </message>
    <message>
        <source>It is initialed only by who signed it: somebody else has to.</source>
        <translation>Solo tiene iniciales de quien la firmó: debe ponerlas otra persona.</translation>
    </message>
    <message>
        <source>The signature is weak: confirm it with the preceptor.</source>
        <translation>La firma es débil: hay que confirmarla con el preceptor.</translation>
    </message>
    <message>
        <source>Two instructors acted on it apart; one action is in force, the other stands beside it.</source>
        <translation>Dos docentes decidieron por separado; una decisión está en vigor, la otra queda al lado.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is N/A: was it not called for on this case?</source>
        <translation>«%1» tiene N/A: ¿no hacía falta en este caso?</translation>
    </message>
    <message>
        <source>Counts are N/A on a case that usually has counts: does the reason hold?</source>
        <translation>Los conteos tienen N/A en un caso que suele llevarlos: ¿vale el motivo?</translation>
    </message>
    <message>
        <source>It says it was written before a receipt that its phone had seen.</source>
        <translation>Dice que se escribió antes de un acuse que su teléfono ya tenía.</translation>
    </message>
    <message>
        <source>It says it was written after the receipt for it.</source>
        <translation>Dice que se escribió después de su acuse.</translation>
    </message>
    <message>
        <source>The clock of the phone was set back before it was written.</source>
        <translation>El reloj del teléfono se atrasó antes de escribirla.</translation>
    </message>
    <message>
        <source>It is dated to a day that had been received before it was opened.</source>
        <translation>Lleva la fecha de un día ya recibido antes de abrirla.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n sheet(s) overlap in time, at different sites or in different rooms. Was the preceptor at each of them?</source>
        <translation>
            <numerusform>%1: %n hoja se cruza en el tiempo, en otra sede o sala. ¿Estuvo el preceptor en ella?</numerusform>
            <numerusform>%1: %n hojas se cruzan en el tiempo, en distintas sedes o salas. ¿Estuvo el preceptor en todas?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n sheet(s) of one day, more than usual. Did the preceptor sign each of them?</source>
        <translation>
            <numerusform>%1: %n hoja de un día, más de lo usual. ¿La firmó el preceptor?</numerusform>
            <numerusform>%1: %n hojas de un día, más de lo usual. ¿Las firmó todas el preceptor?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n sheet(s) of different sites, signed within a minute. Did the preceptor sign each of them?</source>
        <translation>
            <numerusform>%1: %n hoja de otra sede, firmada en un minuto. ¿La firmó el preceptor?</numerusform>
            <numerusform>%1: %n hojas de distintas sedes, firmadas en un minuto. ¿Las firmó todas el preceptor?</numerusform>
        </translation>
    </message>
    <message>
        <source>Marked by %1 · %2</source>
        <translation>Marcas de %1 · %2</translation>
    </message>
    <message>
        <source>Initialed by %1</source>
        <translation>Con iniciales de %1</translation>
    </message>
    <message>
        <source>Changed by an instructor, not initialed since</source>
        <translation>Cambiada por un docente, sin iniciales desde entonces</translation>
    </message>
    <message>
        <source>Returned to the student</source>
        <translation>Devuelta al estudiante</translation>
    </message>
    <message>
        <source>Taken back by the student</source>
        <translation>Retirada por el estudiante</translation>
    </message>
    <message>
        <source>not filed</source>
        <translation>sin especialidad</translation>
    </message>
    <message>
        <source>Procedure</source>
        <translation>Procedimiento</translation>
    </message>
    <message>
        <source>%1 signed otherwise: %2; %3.</source>
        <translation>%1 firmó otra cosa: %2; %3.</translation>
    </message>
    <message>
        <source>%1 is not filed under a specialty: it does not count yet.</source>
        <translation>%1 no tiene especialidad: todavía no cuenta.</translation>
    </message>
    <message>
        <source>%1 is filed under %2; the catalog has it under %3.</source>
        <translation>%1 está en %2; el catálogo lo tiene en %3.</translation>
    </message>
    <message>
        <source>Complete under %1, decided by %2, %3.</source>
        <translation>Cumplido según %1, decidido por %2, %3.</translation>
    </message>
    <message>
        <source>Complete by exception under %1, %4 of %5 cases, decided by %2, %3. Reason: %6</source>
        <translation>Cumplido por excepción según %1, %4 de %5 casos, decidido por %2, %3. Motivo: %6</translation>
    </message>
    <message>
        <source>It may be entered twice. Same date and procedure: %1.</source>
        <translation>Puede que esté dos veces. Misma fecha y procedimiento: %1.</translation>
    </message>
    <message>
        <source>The program does not list the credential with which %1 signed for this role.</source>
        <translation>El programa no incluye en su lista, para esta función, la credencial con la que firmó %1.</translation>
    </message>
    <message>
        <source>By the day of the case the program had not oriented %1.</source>
        <translation>El día del caso, el programa aún no había orientado a %1.</translation>
    </message>
    <message>
        <source>%1 is not active as a preceptor of the program.</source>
        <translation>%1 no figura en activo como preceptor del programa.</translation>
    </message>
    <message>
        <source>The day of the case is no clinical day of the class.</source>
        <translation>El día del caso no es un día clínico de la clase.</translation>
    </message>
    <message>
        <source>On that day the class was at %1.</source>
        <translation>Ese día la clase estaba en %1.</translation>
    </message>
</context>
<context>
    <name>CheckedSheetPage</name>
    <message>
        <source>Before</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>The sheet before</source>
        <translation>La hoja anterior</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>The next sheet</source>
        <translation>La hoja siguiente</translation>
    </message>
    <message>
        <source>Why is it void? Nothing more can be done with it afterwards; it stays visible.</source>
        <translation>¿Por qué se anula? Después no se puede hacer nada más con ella; sigue visible.</translation>
    </message>
    <message>
        <source>What do you ask the student? The sheet waits until they answer.</source>
        <translation>¿Qué se le pregunta al estudiante? La hoja espera hasta que responda.</translation>
    </message>
    <message>
        <source>Void it</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>Return it</source>
        <translation>Devolver</translation>
    </message>
    <message>
        <source>Also on this operation, it seems</source>
        <translation>También en esta operación, al parecer</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
</context>
<context>
    <name>ClassListPage</name>
    <message>
        <source>Invite a whole class</source>
        <translation>Invitar a toda una clase</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>A table as CSV with a header row and the columns name and class; other columns are passed over.</source>
        <translation>Una tabla CSV con una fila de títulos y las columnas name y class; las demás columnas no se leen.</translation>
    </message>
    <message numerus="yes">
        <source>Cannot be used: %n line(s)</source>
        <translation>
            <numerusform>No se puede usar: %n línea</numerusform>
            <numerusform>No se pueden usar: %n líneas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Invited: %n student(s)</source>
        <translation>
            <numerusform>Con invitación: %n estudiante</numerusform>
            <numerusform>Con invitación: %n estudiantes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>On the list: %n student(s)</source>
        <translation>
            <numerusform>En la lista: %n estudiante</numerusform>
            <numerusform>En la lista: %n estudiantes</numerusform>
        </translation>
    </message>
    <message>
        <source>Print all open invitations: save them as PDF</source>
        <translation>Imprimir todas las invitaciones abiertas: guardar como PDF</translation>
    </message>
    <message>
        <source>Save them as files, one for each student</source>
        <translation>Guardarlas como archivos, uno por estudiante</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message numerus="yes">
        <source>Invite these %n student(s)</source>
        <translation>
            <numerusform>Invitar a este estudiante</numerusform>
            <numerusform>Invitar a estos %n estudiantes</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose another list</source>
        <translation>Elegir otra lista</translation>
    </message>
    <message>
        <source>Choose the class list</source>
        <translation>Elegir la lista de la clase</translation>
    </message>
</context>
<context>
    <name>ClassPage</name>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Student</source>
        <translation>Estudiante</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Faltan</translation>
    </message>
    <message>
        <source>Last sheet</source>
        <translation>Última hoja</translation>
    </message>
    <message>
        <source>To do</source>
        <translation>Por hacer</translation>
    </message>
    <message>
        <source>Nobody fits. Clear the search or choose another class.</source>
        <translation>No hay nadie así. Borre la búsqueda o elija otra clase.</translation>
    </message>
    <message>
        <source>Counted as recorded, placed as best. The program&apos;s director decides which requirements are in force and who has met them.</source>
        <translation>Contado como está anotado y ubicado de la mejor manera. La dirección del programa decide qué requisitos están en vigor y quién los ha cumplido.</translation>
    </message>
</context>
<context>
    <name>ClinicalDaysPage</name>
    <message>
        <source>Are these the days?</source>
        <translation>¿Son estos los días?</translation>
    </message>
    <message>
        <source>Clinical days</source>
        <translation>Días clínicos</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Site of days that name none</source>
        <translation>Sede de los días que no la dicen</translation>
    </message>
    <message>
        <source>Time zone of the site, only for calendars in UTC</source>
        <translation>Zona horaria de la sede, solo para calendarios en UTC</translation>
    </message>
    <message numerus="yes">
        <source>In the file: %n day(s), in place of those that are listed</source>
        <translation>
            <numerusform>En el archivo: %n día, en lugar de los que están en la lista</numerusform>
            <numerusform>En el archivo: %n días, en lugar de los que están en la lista</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From today on: %n day(s)</source>
        <translation>
            <numerusform>De hoy en adelante: %n día</numerusform>
            <numerusform>De hoy en adelante: %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>No clinical day is listed from today on. Take the days in from a calendar (.ics), or from a table (CSV) with the columns date, site, start and end.</source>
        <translation>No hay días clínicos de hoy en adelante. Recíbalos de un calendario (.ics) o de una tabla (CSV) con las columnas date, site, start y end.</translation>
    </message>
    <message>
        <source>No clinical day is listed from today on.</source>
        <translation>No hay días clínicos de hoy en adelante.</translation>
    </message>
    <message>
        <source>Hide the days before</source>
        <translation>Ocultar los días anteriores</translation>
    </message>
    <message numerus="yes">
        <source>Before: %n day(s)</source>
        <translation>
            <numerusform>Antes: %n día</numerusform>
            <numerusform>Antes: %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>The director, instructors and coordinators change these days.</source>
        <translation>La dirección, los docentes y los coordinadores cambian estos días.</translation>
    </message>
    <message>
        <source>Take all days off this list? The students see it with your next parcels.</source>
        <translation>¿Quitar todos los días de esta lista? Los estudiantes lo ven con sus próximos paquetes.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Sign: take the days in</source>
        <translation>Firmar: recibir los días</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Elegir otro archivo</translation>
    </message>
    <message>
        <source>Take days in from a file</source>
        <translation>Recibir días de un archivo</translation>
    </message>
    <message>
        <source>Save as a calendar</source>
        <translation>Guardar como calendario</translation>
    </message>
    <message>
        <source>Sign: take all days away</source>
        <translation>Firmar: quitar todos los días</translation>
    </message>
    <message>
        <source>Take all days away</source>
        <translation>Quitar todos los días</translation>
    </message>
    <message>
        <source>Leave the days as they are</source>
        <translation>Dejar los días como están</translation>
    </message>
</context>
<context>
    <name>CodeReader</name>
    <message>
        <source>Open the file, or a picture of the code</source>
        <translation>Abrir el archivo o una imagen del código</translation>
    </message>
    <message>
        <source>Or paste the text</source>
        <translation>O pegar el texto</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Scan the code</source>
        <translation>Escanear el código</translation>
    </message>
    <message>
        <source>Use this text</source>
        <translation>Usar este texto</translation>
    </message>
</context>
<context>
    <name>Codes</name>
    <message>
        <source>This is not the code of a case sheet. On the student&apos;s phone: Mark and sign on my own phone.</source>
        <translation>Este no es el código de una hoja de caso. En el teléfono del estudiante: Marcar y firmar en mi propio teléfono.</translation>
    </message>
    <message>
        <source>This code was made by a newer Peelpack: update this one.</source>
        <translation>Este código es de una versión más nueva de Peelpack: actualice esta.</translation>
    </message>
    <message>
        <source>This code is damaged: scan it again, or open it as a file.</source>
        <translation>Este código está dañado: escanéelo otra vez o ábralo como archivo.</translation>
    </message>
    <message>
        <source>This is not the answer of a preceptor&apos;s phone. Scan the code that it shows after signing.</source>
        <translation>Esta no es la respuesta del teléfono de un preceptor. Escanee el código que muestra después de firmar.</translation>
    </message>
    <message>
        <source>This answer belongs to another program. Nothing was taken in.</source>
        <translation>Esta respuesta es de otro programa. No se recibió nada.</translation>
    </message>
    <message>
        <source>This answer is for another student&apos;s sheet. Nothing was taken in.</source>
        <translation>Esta respuesta es para la hoja de otro estudiante. No se recibió nada.</translation>
    </message>
    <message>
        <source>This answer is for another sheet. Nothing was taken in.</source>
        <translation>Esta respuesta es para otra hoja. No se recibió nada.</translation>
    </message>
    <message>
        <source>The signature in this answer does not fit: it was altered. Nothing was taken in.</source>
        <translation>La firma de esta respuesta no corresponde: fue alterada. No se recibió nada.</translation>
    </message>
    <message>
        <source>This answer is damaged: scan it again, or open it as a file.</source>
        <translation>Esta respuesta está dañada: escanéela otra vez o ábrala como archivo.</translation>
    </message>
</context>
<context>
    <name>CompletionPage</name>
    <message>
        <source>Completion</source>
        <translation>Cumplimiento</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Cases are short. Only an exception with a reason can make it complete, and it is shown as one everywhere.</source>
        <translation>Faltan casos. Solo una excepción con motivo lo da por cumplido, y se muestra como tal en todas partes.</translation>
    </message>
    <message>
        <source>Why is it complete although cases are short? Journal, record and papers show this reason.</source>
        <translation>¿Por qué se da por cumplido aunque faltan casos? El diario, la constancia y los papeles muestran este motivo.</translation>
    </message>
    <message>
        <source>Read it back</source>
        <translation>Leerlo antes de firmar</translation>
    </message>
    <message>
        <source>This is what you sign</source>
        <translation>Esto es lo que se firma</translation>
    </message>
    <message>
        <source>Sign this</source>
        <translation>Firmar esto</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Peelpack counts; the program&apos;s director decides who has met the requirements.</source>
        <translation>Peelpack cuenta; la dirección del programa decide quién ha cumplido los requisitos.</translation>
    </message>
    <message>
        <source>Mark complete</source>
        <translation>Dar por cumplido</translation>
    </message>
    <message>
        <source>Complete by exception</source>
        <translation>Dar por cumplido por excepción</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
</context>
<context>
    <name>ConfirmPage</name>
    <message>
        <source>Sheets to confirm</source>
        <translation>Hojas por confirmar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Signed sheets that are not confirmed yet, drawn at random. Ask each preceptor whether they scrubbed on these cases and gave these marks.</source>
        <translation>Hojas firmadas que aún no se confirmaron, sacadas al azar. Pregunte a cada preceptor si se instrumentó en estos casos y dio estas marcas.</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Number of an earlier drawing</source>
        <translation>Número de un sorteo anterior</translation>
    </message>
    <message>
        <source>New ones</source>
        <translation>Nuevas</translation>
    </message>
    <message>
        <source>Ask %1</source>
        <translation>Preguntar a %1</translation>
    </message>
    <message>
        <source>It is theirs</source>
        <translation>Es suya</translation>
    </message>
    <message>
        <source>Says: not mine</source>
        <translation>Dice: no es mía</translation>
    </message>
    <message>
        <source>See the sheet</source>
        <translation>Ver la hoja</translation>
    </message>
    <message>
        <source>How did you confirm it? You may leave this empty.</source>
        <translation>¿Cómo se confirmó? Puede quedar vacío.</translation>
    </message>
    <message>
        <source>Confirmed: initial it</source>
        <translation>Confirmada: poner iniciales</translation>
    </message>
    <message>
        <source>Preceptors say that these are not theirs</source>
        <translation>Los preceptores dicen que estas no son suyas</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Sacar hojas</translation>
    </message>
</context>
<context>
    <name>DeclinePage</name>
    <message>
        <source>Why are you not signing?</source>
        <translation>¿Por qué no firma?</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>I was not there for most of the case.</source>
        <translation>No estuve en la mayor parte del caso.</translation>
    </message>
    <message>
        <source>I was relieved before the case was over.</source>
        <translation>Me relevaron antes de que terminara el caso.</translation>
    </message>
    <message>
        <source>This is not what was performed.</source>
        <translation>Esto no es lo que se realizó.</translation>
    </message>
    <message>
        <source>Your reason; the student and the instructor see it</source>
        <translation>Su motivo; lo ven el estudiante y el docente</translation>
    </message>
    <message>
        <source>Decline to sign</source>
        <translation>No firmar</translation>
    </message>
</context>
<context>
    <name>DemoBanner</name>
    <message>
        <source>Demo. The student&apos;s PIN is 246813.</source>
        <translation>Demo. El PIN del estudiante es 246813.</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Leave the demo</source>
        <translation>Salir de la demo</translation>
    </message>
    <message>
        <source>Demo: all of it is invented, and none of it can enter a real record.</source>
        <translation>Demo: todo es inventado, nada es real.</translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>The weakest way</source>
        <translation>La forma menos segura</translation>
    </message>
    <message>
        <source>Draw your signature</source>
        <translation>Dibuje su firma</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Your credential, such as CST or RN</source>
        <translation>Su credencial, como CST o RN</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Signature area</source>
        <translation>Campo para su firma</translation>
    </message>
    <message>
        <source>Draw it again</source>
        <translation>Dibujar de nuevo</translation>
    </message>
    <message>
        <source>Sign with this drawing</source>
        <translation>Firmar con este dibujo</translation>
    </message>
    <message>
        <source>Nobody can tell later who drew it.</source>
        <translation>Después nadie puede saber quién la dibujó.</translation>
    </message>
</context>
<context>
    <name>ElsewherePage</name>
    <message>
        <source>This vault belongs to staff</source>
        <translation>Esta bóveda es del personal</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>This app has no pages for coordinators and contacts of a site. Use the peelpack command with this vault.</source>
        <translation>Esta app no tiene páginas para coordinadores ni contactos de una sede. Use el comando peelpack con esta bóveda.</translation>
    </message>
</context>
<context>
    <name>EvidenceRows</name>
    <message>
        <source>Papers and rows</source>
        <translation>Papeles y filas</translation>
    </message>
    <message>
        <source>Case log, class board, report for the accreditor, completion record</source>
        <translation>Registro de casos, tablero del grupo, informe para la acreditación, constancia de cumplimiento</translation>
    </message>
    <message>
        <source>Sheets to confirm</source>
        <translation>Hojas por confirmar</translation>
    </message>
    <message>
        <source>Drawn at random, to be asked of their preceptors</source>
        <translation>Sacadas al azar, para preguntar a sus preceptores</translation>
    </message>
    <message>
        <source>What does not count yet</source>
        <translation>Lo que todavía no cuenta</translation>
    </message>
    <message>
        <source>After a record split, or from a device that was ended</source>
        <translation>Tras dividirse un registro, o de un dispositivo dado de baja</translation>
    </message>
</context>
<context>
    <name>FirstPages</name>
    <message>
        <source>The program is set up</source>
        <translation>El programa está creado</translation>
    </message>
    <message>
        <source>Next you see your own pages. Under Me you invite people and make signing cards.</source>
        <translation>A continuación verá sus propias páginas. En «Yo» invita a personas y crea tarjetas de firma.</translation>
    </message>
    <message>
        <source>You are the program&apos;s director now</source>
        <translation>Ahora usted dirige el programa</translation>
    </message>
    <message>
        <source>Compare the id with the one that the others see. Next: take in the record, then send a parcel to the other instructors.</source>
        <translation>Compare el identificador con el que ven los demás. Después: reciba el registro y envíe un paquete a los demás docentes.</translation>
    </message>
</context>
<context>
    <name>GrantPage</name>
    <message>
        <source>Let somebody in</source>
        <translation>Dar entrada a alguien</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Whoever you invited has joined on their own phone; it shows an answer.</source>
        <translation>La persona invitada se ha unido en su propio teléfono, que muestra una respuesta.</translation>
    </message>
    <message>
        <source>Their phone must show these six digits. Have them read to you.</source>
        <translation>Su teléfono debe mostrar estos seis dígitos. Pida que se los lea.</translation>
    </message>
    <message>
        <source>The same name and digits: let them in</source>
        <translation>El mismo nombre y los mismos dígitos: dar entrada</translation>
    </message>
    <message>
        <source>Other digits: stop</source>
        <translation>Otros dígitos: detener</translation>
    </message>
    <message>
        <source>Send them a parcel</source>
        <translation>Enviarle un paquete</translation>
    </message>
</context>
<context>
    <name>HandProgramOverPage</name>
    <message>
        <source>Hand the program over</source>
        <translation>Entregar el programa</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>1. Give the paper with the program code to the new director. Whoever has the code can name the director.</source>
        <translation>1. Dé el papel con el código del programa a la nueva dirección. Quien tiene el código puede nombrar a la dirección.</translation>
    </message>
    <message>
        <source>2. On their own device: Set up a program, The program exists already. They type the code, and are director number %1.</source>
        <translation>2. En su propio equipo: Crear un programa, El programa ya existe. Escribe el código y es la dirección número %1.</translation>
    </message>
    <message>
        <source>3. They compare the program&apos;s id:
%1</source>
        <translation>3. Compara el identificador del programa:
%1</translation>
    </message>
    <message>
        <source>4. Give them the whole record as a file; they take it in, and send a parcel to the instructors and to you.</source>
        <translation>4. Dele todo el registro como archivo; lo recibe y envía un paquete a los docentes y a usted.</translation>
    </message>
    <message>
        <source>The file is not sealed and holds the education records of all students: hand it over yourself, and delete it afterwards. This device keeps its rights until it is ended.</source>
        <translation>El archivo no va sellado y contiene los expedientes educativos de todos los estudiantes: entréguelo usted y bórrelo después. Este equipo conserva sus derechos hasta que se le ponga fin.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Save the whole record as a file</source>
        <translation>Guardar todo el registro como archivo</translation>
    </message>
</context>
<context>
    <name>History</name>
    <message>
        <source>a specialty of a newer version</source>
        <translation>una especialidad de una versión más nueva</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is %2</source>
        <translation>«%1» es %2</translation>
    </message>
    <message>
        <source>date, place, surgeon or times</source>
        <translation>fecha, lugar, cirujano u horas</translation>
    </message>
    <message>
        <source>the procedures</source>
        <translation>los procedimientos</translation>
    </message>
    <message>
        <source>Changed the sheet: %1.</source>
        <translation>Cambió la hoja: %1.</translation>
    </message>
    <message>
        <source>nobody can tell whose signature it is</source>
        <translation>no se sabe de quién es la firma</translation>
    </message>
    <message>
        <source>Signed by %1 (%2): %3.</source>
        <translation>Firmada por %1 (%2): %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n marca</numerusform>
            <numerusform>%n marcas</numerusform>
        </translation>
    </message>
    <message>
        <source>The hand-over was taken back unsigned.</source>
        <translation>El teléfono volvió sin firma.</translation>
    </message>
    <message>
        <source>The hand-over ended unsigned: the PIN was wrong.</source>
        <translation>La entrega del teléfono terminó sin firma: el PIN era incorrecto.</translation>
    </message>
    <message>
        <source>The hand-over ended unsigned: it was not the right card.</source>
        <translation>La entrega del teléfono terminó sin firma: no era la tarjeta correcta.</translation>
    </message>
    <message>
        <source>The hand-over ended unsigned: it took too long.</source>
        <translation>La entrega del teléfono terminó sin firma: tardó demasiado.</translation>
    </message>
    <message numerus="yes">
        <source>A wrong PIN was tried %n time(s).</source>
        <translation>
            <numerusform>Se probó un PIN incorrecto %n vez.</numerusform>
            <numerusform>Se probó un PIN incorrecto %n veces.</numerusform>
        </translation>
    </message>
    <message>
        <source>Opened the sheet: %1.</source>
        <translation>Abrió la hoja: %1.</translation>
    </message>
    <message>
        <source>Took the sheet back.</source>
        <translation>Retiró la hoja.</translation>
    </message>
    <message>
        <source>Asked to take the sheet back.</source>
        <translation>Pidió retirar la hoja.</translation>
    </message>
    <message>
        <source>Filed under %1.</source>
        <translation>Archivada en %1.</translation>
    </message>
    <message>
        <source>Asked for a mark review: %1.</source>
        <translation>Pidió revisar una marca: %1.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; should be %2</source>
        <translation>«%1» debería ser %2</translation>
    </message>
    <message>
        <source>The preceptor declined to sign.</source>
        <translation>El preceptor no quiso firmar.</translation>
    </message>
    <message>
        <source>Initialed.</source>
        <translation>Puso las iniciales.</translation>
    </message>
    <message>
        <source>Initialed, and confirmed the signature with the preceptor.</source>
        <translation>Puso las iniciales y confirmó la firma con el preceptor.</translation>
    </message>
    <message>
        <source>Returned the sheet.</source>
        <translation>Devolvió la hoja.</translation>
    </message>
    <message>
        <source>Accepted a mark review: %1.</source>
        <translation>Aceptó la revisión de una marca: %1.</translation>
    </message>
    <message>
        <source>Filed anew under %1.</source>
        <translation>Archivada de nuevo en %1.</translation>
    </message>
    <message>
        <source>Made the sheet void.</source>
        <translation>Anuló la hoja.</translation>
    </message>
    <message>
        <source>Imported from %1: %2, %3.</source>
        <translation>Importada de %1: %2, %3.</translation>
    </message>
    <message>
        <source>somebody unknown</source>
        <translation>una persona desconocida</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Motivo: %1</translation>
    </message>
</context>
<context>
    <name>InitialForm</name>
    <message>
        <source>I confirmed the signature with the preceptor</source>
        <translation>Confirmé la firma con el preceptor</translation>
    </message>
    <message>
        <source>Without it your initials are kept, and the case does not count yet.</source>
        <translation>Sin eso se guardan las iniciales y el caso todavía no cuenta.</translation>
    </message>
    <message>
        <source>How did you confirm it? You may leave this empty.</source>
        <translation>¿Cómo se confirmó? Puede quedar vacío.</translation>
    </message>
    <message>
        <source>Initial it</source>
        <translation>Poner iniciales</translation>
    </message>
</context>
<context>
    <name>InvitationPage</name>
    <message>
        <source>Invitation for %1</source>
        <translation>Invitación para %1</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Code of the invitation</source>
        <translation>Código de la invitación</translation>
    </message>
    <message>
        <source>On their own phone: Join a program, then scan this. It serves one person once. Hand it over yourself: whoever has it can join in their name.</source>
        <translation>En su propio teléfono: Unirse a un programa y escanear esto. Sirve a una persona una vez. Entréguela usted: quien la tenga puede unirse en su nombre.</translation>
    </message>
    <message>
        <source>Save it as a file</source>
        <translation>Guardarla como archivo</translation>
    </message>
    <message>
        <source>Print it: save it as PDF</source>
        <translation>Imprimirla: guardar como PDF</translation>
    </message>
    <message>
        <source>Show it as text</source>
        <translation>Mostrarla como texto</translation>
    </message>
    <message>
        <source>Where there is no camera</source>
        <translation>Donde no hay cámara</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Copiado</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Copiar el texto</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>They have joined: take the answer</source>
        <translation>Ya se ha unido: recibir la respuesta</translation>
    </message>
    <message>
        <source>Take it back? Whoever has it cannot join with it any more.</source>
        <translation>¿Retirarla? Quien la tenga ya no podrá unirse con ella.</translation>
    </message>
    <message>
        <source>Take the invitation back</source>
        <translation>Retirar la invitación</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Dejarla abierta</translation>
    </message>
</context>
<context>
    <name>InvitePage</name>
    <message>
        <source>Invite somebody</source>
        <translation>Invitar a alguien</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Name, as it stands in the program</source>
        <translation>Nombre, como figura en el programa</translation>
    </message>
    <message>
        <source>As what</source>
        <translation>Como qué</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Classes or sites, with semicolons between; for an instructor of the whole program none</source>
        <translation>Clases o sedes, separadas por punto y coma; ninguna para un docente de todo el programa</translation>
    </message>
    <message>
        <source>Make the invitation</source>
        <translation>Crear la invitación</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Program %1</source>
        <translation>Programa %1</translation>
    </message>
    <message>
        <source>First start</source>
        <translation>Primer inicio</translation>
    </message>
    <message>
        <source>You and this phone</source>
        <translation>Tú y este teléfono</translation>
    </message>
    <message>
        <source>Your invitation</source>
        <translation>Tu invitación</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Your instructor gives it to you: a code to scan, a file, or a text.</source>
        <translation>Te la da tu docente: un código para escanear, un archivo o un texto.</translation>
    </message>
    <message>
        <source>Your name, as your instructor knows it</source>
        <translation>Tu nombre, como lo conoce tu docente</translation>
    </message>
    <message>
        <source>Making your record</source>
        <translation>Creando tu registro</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unirme</translation>
    </message>
</context>
<context>
    <name>JoinedPage</name>
    <message>
        <source>You have joined</source>
        <translation>Ya formas parte del programa</translation>
    </message>
    <message>
        <source>Two things before you go on</source>
        <translation>Dos cosas antes de seguir</translation>
    </message>
    <message>
        <source>1. Write down your vault code</source>
        <translation>1. Anota tu código de la bóveda</translation>
    </message>
    <message>
        <source>2. Show this to your instructor</source>
        <translation>2. Muestra esto a tu docente</translation>
    </message>
    <message>
        <source>Code of your answer</source>
        <translation>Código de tu respuesta</translation>
    </message>
    <message>
        <source>Both of you must see these digits: %1</source>
        <translation>Los dos deben ver estos dígitos: %1</translation>
    </message>
    <message>
        <source>If your instructor sees others, somebody else has answered: stop, and ask for a new invitation.</source>
        <translation>Si tu docente ve otros, respondió otra persona: detente y pide una invitación nueva.</translation>
    </message>
    <message>
        <source>Save the answer as a file</source>
        <translation>Guardar la respuesta como archivo</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
    <message>
        <source>The code is on paper, go on</source>
        <translation>El código está en papel, seguir</translation>
    </message>
    <message>
        <source>Copy the answer as text</source>
        <translation>Copiar la respuesta como texto</translation>
    </message>
    <message>
        <source>Copied: paste it into a message to your instructor</source>
        <translation>Copiada: pégala en un mensaje a tu docente</translation>
    </message>
</context>
<context>
    <name>LockPage</name>
    <message>
        <source>Locked</source>
        <translation>Bloqueado</translation>
    </message>
    <message>
        <source>PIN or passphrase</source>
        <translation>PIN o frase de contraseña</translation>
    </message>
    <message>
        <source>Vault code, 7 groups of 5</source>
        <translation>Código de la bóveda, 7 grupos de 5</translation>
    </message>
    <message>
        <source>Use the PIN or passphrase</source>
        <translation>Usar el PIN o la frase de contraseña</translation>
    </message>
    <message>
        <source>Forgotten? Use the vault code</source>
        <translation>¿Lo olvidaste? Usa el código de la bóveda</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Abriendo</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Look around in the demo</source>
        <translation>Explorar la demo</translation>
    </message>
</context>
<context>
    <name>LooksRows</name>
    <message>
        <source>How it looks</source>
        <translation>Apariencia</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Text size: %1 %</source>
        <translation>Tamaño del texto: %1 %</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Menor</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Mayor</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Mano izquierda</translation>
    </message>
    <message>
        <source>What you tap moves to the left.</source>
        <translation>Lo que se toca pasa a la izquierda.</translation>
    </message>
    <message>
        <source>No motion</source>
        <translation>Sin movimiento</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
</context>
<context>
    <name>MarkLine</name>
    <message>
        <source>Ask for a mark review</source>
        <translation>Pedir una revisión de la marca</translation>
    </message>
    <message>
        <source>Ask for a mark review: %1</source>
        <translation>Pedir una revisión de la marca: %1</translation>
    </message>
    <message>
        <source>You did this: say when and how. Your instructor reads it; the preceptor&apos;s mark stays beside it.</source>
        <translation>Lo hiciste: di cuándo y cómo. Tu docente lo lee; la marca del preceptor queda al lado.</translation>
    </message>
    <message>
        <source>Ask for the review</source>
        <translation>Pedir la revisión</translation>
    </message>
</context>
<context>
    <name>MarkingPage</name>
    <message>
        <source>You are marking the sheet of %1</source>
        <translation>Usted marca la hoja de %1</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>All five first-scrub skills: Yes</source>
        <translation>Las cinco de primera instrumentación: Sí</translation>
    </message>
    <message>
        <source>First-scrub skills</source>
        <translation>Habilidades de primera instrumentación</translation>
    </message>
    <message>
        <source>Second-scrub skills</source>
        <translation>Habilidades de segunda instrumentación</translation>
    </message>
    <message>
        <source>Why N/A? Not called for on this case, because</source>
        <translation>¿Por qué N/A? En este caso no hacía falta, porque</translation>
    </message>
    <message>
        <source>Why N/A? You may leave it out</source>
        <translation>¿Por qué N/A? Puede omitirlo</translation>
    </message>
    <message>
        <source>Policy calls for no counts here</source>
        <translation>Aquí las normas no piden conteos</translation>
    </message>
    <message>
        <source>No countable items were used</source>
        <translation>No se usó nada que se cuente</translation>
    </message>
    <message>
        <source>Not part of this procedure</source>
        <translation>No es parte de este procedimiento</translation>
    </message>
    <message>
        <source>Done before the student came</source>
        <translation>Hecho antes de que llegara el estudiante</translation>
    </message>
    <message>
        <source>What you did not see, leave unmarked: somebody who saw it can mark it.</source>
        <translation>Lo que no vio, déjelo sin marcar: puede marcarlo alguien que lo haya visto.</translation>
    </message>
    <message>
        <source>Add feedback</source>
        <translation>Agregar comentarios</translation>
    </message>
    <message numerus="yes">
        <source>%n skill(s) not marked: they stay open.</source>
        <translation>
            <numerusform>%n habilidad sin marcar: queda abierta.</numerusform>
            <numerusform>%n habilidades sin marcar: quedan abiertas.</numerusform>
        </translation>
    </message>
    <message>
        <source>On to the next sheet</source>
        <translation>Ir a la hoja siguiente</translation>
    </message>
    <message>
        <source>Read back what I sign</source>
        <translation>Releer lo que firmo</translation>
    </message>
    <message>
        <source>Feedback for the student: what went well, what to do next time</source>
        <translation>Comentarios para el estudiante: qué salió bien, qué hacer la próxima vez</translation>
    </message>
</context>
<context>
    <name>MarksCard</name>
    <message>
        <source>First-scrub skills</source>
        <translation>Habilidades de primera instrumentación</translation>
    </message>
    <message>
        <source>Second-scrub skills</source>
        <translation>Habilidades de segunda instrumentación</translation>
    </message>
</context>
<context>
    <name>MePage</name>
    <message>
        <source>Send and take in</source>
        <translation>Enviar y recibir</translation>
    </message>
    <message>
        <source>My phone</source>
        <translation>Mi teléfono</translation>
    </message>
    <message>
        <source>PIN or passphrase, vault code, when it locks</source>
        <translation>PIN o frase de contraseña, código de la bóveda, cuándo se bloquea</translation>
    </message>
    <message>
        <source>Leave the demo</source>
        <translation>Salir de la demo</translation>
    </message>
    <message>
        <source>Lock now</source>
        <translation>Bloquear ahora</translation>
    </message>
</context>
<context>
    <name>MyPhonePage</name>
    <message>
        <source>My phone</source>
        <translation>Mi teléfono</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Your new vault code, shown only now. The old one opens nothing any more. Keep it on paper, not on this phone.</source>
        <translation>Tu nuevo código de la bóveda; solo se muestra ahora. El anterior ya no abre nada. Guárdalo en papel, no en este teléfono.</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>Está en papel</translation>
    </message>
    <message numerus="yes">
        <source>Locks after %n minute(s) without a touch</source>
        <translation>
            <numerusform>Se bloquea tras %n minuto sin tocarlo</numerusform>
            <numerusform>Se bloquea tras %n minutos sin tocarlo</numerusform>
        </translation>
    </message>
    <message>
        <source>Sooner</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Change PIN or passphrase</source>
        <translation>Cambiar el PIN o la frase de contraseña</translation>
    </message>
    <message>
        <source>Make a new vault code</source>
        <translation>Crear un código de la bóveda nuevo</translation>
    </message>
    <message>
        <source>Your PIN or passphrase now</source>
        <translation>Con qué se abre ahora</translation>
    </message>
    <message>
        <source>Open with a PIN</source>
        <translation>Abrir con un PIN</translation>
    </message>
    <message>
        <source>Quicker and weaker than a passphrase: whoever copies this phone&apos;s storage can try PINs.</source>
        <translation>Más rápido y menos seguro que una frase de contraseña: quien copie la memoria de este teléfono puede probar PIN tras PIN.</translation>
    </message>
    <message>
        <source>New PIN, 6 to 12 digits</source>
        <translation>PIN nuevo, de 6 a 12 dígitos</translation>
    </message>
    <message>
        <source>New passphrase, at least 8 characters</source>
        <translation>Frase de contraseña nueva, al menos 8 caracteres</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Lo mismo otra vez</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Procesando</translation>
    </message>
    <message>
        <source>Make the code</source>
        <translation>Crear el código</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiar</translation>
    </message>
</context>
<context>
    <name>NamePage</name>
    <message>
        <source>This phone signs</source>
        <translation>Este teléfono firma</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation>¿Quién es usted?</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>This vault holds a preceptor&apos;s signing key and no student&apos;s record.</source>
        <translation>Esta bóveda guarda la clave de firma de un preceptor y ningún registro de estudiante.</translation>
    </message>
    <message>
        <source>Your name, as it stands under what you sign</source>
        <translation>Su nombre, como aparece bajo lo que firma</translation>
    </message>
    <message>
        <source>Your credential, such as CST or RN</source>
        <translation>Su credencial, como CST o RN</translation>
    </message>
    <message>
        <source>That is me</source>
        <translation>Soy yo</translation>
    </message>
</context>
<context>
    <name>NewSecret</name>
    <message>
        <source>Open with a PIN</source>
        <translation>Abrir con un PIN</translation>
    </message>
    <message>
        <source>Quicker and weaker than a passphrase: whoever copies this phone&apos;s storage can try PINs.</source>
        <translation>Más rápido y menos seguro que una frase de contraseña: quien copie la memoria de este teléfono puede probar PIN tras PIN.</translation>
    </message>
    <message>
        <source>PIN, 6 to 12 digits</source>
        <translation>PIN, de 6 a 12 dígitos</translation>
    </message>
    <message>
        <source>Passphrase, at least 8 characters; four odd words are good</source>
        <translation>Frase de contraseña, al menos 8 caracteres; van bien cuatro palabras poco comunes</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Lo mismo otra vez</translation>
    </message>
</context>
<context>
    <name>NewSheetPage</name>
    <message>
        <source>New case sheet</source>
        <translation>Hoja de caso nueva</translation>
    </message>
    <message>
        <source>Which procedure?</source>
        <translation>¿Qué se realizó?</translation>
    </message>
    <message>
        <source>Your case</source>
        <translation>Tu caso</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Search for a procedure</source>
        <translation>Buscar un procedimiento</translation>
    </message>
    <message>
        <source>Write it as &quot;%1&quot;</source>
        <translation>Escribirlo como “%1”</translation>
    </message>
    <message>
        <source>Not in the list: you choose its specialty afterwards.</source>
        <translation>No está en la lista: eliges su especialidad después.</translation>
    </message>
    <message>
        <source>Add a procedure of the same operation</source>
        <translation>Agregar un procedimiento de la misma operación</translation>
    </message>
    <message>
        <source>One pathology</source>
        <translation>Una sola patología</translation>
    </message>
    <message>
        <source>Surgeon</source>
        <translation>Cirujano</translation>
    </message>
    <message>
        <source>Fewer fields</source>
        <translation>Menos campos</translation>
    </message>
    <message>
        <source>Change day, site, room or times</source>
        <translation>Cambiar día, sede, sala u horas</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Start, 24-hour time</source>
        <translation>Inicio, 24 horas</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Canceled before incision</source>
        <translation>Cancelado antes de la incisión</translation>
    </message>
    <message>
        <source>It is recorded and has no role.</source>
        <translation>Queda registrado y no tiene rol.</translation>
    </message>
    <message>
        <source>No patient names, numbers, ages or birth dates on a sheet. The date, the site and a rare procedure can still point at one patient: treat your log as confidential.</source>
        <translation>En una hoja no van nombres, números, edades ni fechas de nacimiento de pacientes. La fecha, la sede y un procedimiento raro aún pueden señalar a un paciente: trata tu registro como confidencial.</translation>
    </message>
    <message>
        <source>Save and give the phone</source>
        <translation>Guardar y entregar el teléfono</translation>
    </message>
    <message>
        <source>Save for later</source>
        <translation>Guardar para después</translation>
    </message>
    <message>
        <source>Procedure, or how you say it</source>
        <translation>Procedimiento, o como lo llamas</translation>
    </message>
    <message>
        <source>lap chole</source>
        <translation>lap chole</translation>
    </message>
    <message>
        <source>Favorites, then your latest and most frequent</source>
        <translation>Favoritos; luego los últimos y los más frecuentes</translation>
    </message>
    <message>
        <source>Biopsy then excision of the same tumor, or scope turned open: both are one case.</source>
        <translation>Biopsia y luego escisión del mismo tumor, o endoscopia convertida en abierta: son un solo caso.</translation>
    </message>
</context>
<context>
    <name>OtherSheetCard</name>
    <message>
        <source>Both are first scrub: initialing needs a reason.</source>
        <translation>Ambas son de primera instrumentación: las iniciales piden un motivo.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Verla</translation>
    </message>
    <message>
        <source>Look at the sheet of %1</source>
        <translation>Ver la hoja de %1</translation>
    </message>
</context>
<context>
    <name>OwnPhonePage</name>
    <message>
        <source>Sheet %1 of %2</source>
        <translation>Hoja %1 de %2</translation>
    </message>
    <message>
        <source>Scan the answer</source>
        <translation>Escanee la respuesta</translation>
    </message>
    <message>
        <source>Scan this with your phone</source>
        <translation>Escanee esto con su teléfono</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Code of the sheet to be signed</source>
        <translation>Código de la hoja por firmar</translation>
    </message>
    <message>
        <source>Hold the code on your phone before this camera, or choose a picture or file of it.</source>
        <translation>Ponga el código de su teléfono frente a esta cámara, o elija una imagen o un archivo de él.</translation>
    </message>
    <message>
        <source>Open Peelpack on your phone, scan this code, mark the ten skills and sign there. Then show its answer to this phone.</source>
        <translation>Abra Peelpack en su teléfono, escanee este código, marque las diez habilidades y firme allí. Luego muestre la respuesta a este teléfono.</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>A picture or file of the answer</source>
        <translation>Una imagen o un archivo de la respuesta</translation>
    </message>
    <message>
        <source>Send the request as a file instead</source>
        <translation>Enviar la solicitud como archivo</translation>
    </message>
    <message>
        <source>I signed on my phone</source>
        <translation>Firmé en mi teléfono</translation>
    </message>
    <message>
        <source>Send this to your phone</source>
        <translation>Envíe esto a su teléfono</translation>
    </message>
    <message>
        <source>This sheet has too much text for one code. Send the request as a file: it works the same.</source>
        <translation>Esta hoja tiene demasiado texto para un solo código. Envíe la solicitud como archivo: sirve igual.</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
    <message>
        <source>Scan again</source>
        <translation>Escanear otra vez</translation>
    </message>
</context>
<context>
    <name>OwnProceduresPage</name>
    <message>
        <source>Are these the procedures?</source>
        <translation>¿Son estos los procedimientos?</translation>
    </message>
    <message>
        <source>Own procedures</source>
        <translation>Procedimientos propios</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message numerus="yes">
        <source>In the file: %n procedure(s), in place of those that are listed</source>
        <translation>
            <numerusform>En el archivo: %n procedimiento, en lugar de los de la lista</numerusform>
            <numerusform>En el archivo: %n procedimientos, en lugar de los de la lista</numerusform>
        </translation>
    </message>
    <message>
        <source>Procedures that the catalogue does not have, or that your program calls or files otherwise. Sheets already logged stay where they were filed.</source>
        <translation>Procedimientos que el catálogo no tiene, o que su programa llama o archiva de otro modo. Las hojas ya registradas se quedan donde estaban.</translation>
    </message>
    <message>
        <source>The catalogue is in force as it is shipped.</source>
        <translation>El catálogo rige tal como viene.</translation>
    </message>
    <message>
        <source>The table in force does not fit this version of Peelpack and is left out. Save it, mend it and take it in again.</source>
        <translation>La tabla vigente no encaja con esta versión de Peelpack y se deja fuera. Guárdela, corríjala y vuelva a cargarla.</translation>
    </message>
    <message>
        <source>Only the director changes them.</source>
        <translation>Solo la dirección los cambia.</translation>
    </message>
    <message>
        <source>Take the table away? Sheets of procedures that only it has do not count any more until they are logged.</source>
        <translation>¿Quitar la tabla? Las hojas de procedimientos que solo ella tiene dejan de contar hasta que se registren.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Sign: put them in force</source>
        <translation>Firmar: ponerlos en vigor</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Elegir otro archivo</translation>
    </message>
    <message>
        <source>Take them in from a table</source>
        <translation>Cargarlos de una tabla</translation>
    </message>
    <message>
        <source>Save the table</source>
        <translation>Guardar la tabla</translation>
    </message>
    <message>
        <source>Save an empty table to fill in</source>
        <translation>Guardar una tabla vacía para rellenar</translation>
    </message>
    <message>
        <source>Sign: take the table away</source>
        <translation>Firmar: quitar la tabla</translation>
    </message>
    <message>
        <source>Take the table away</source>
        <translation>Quitar la tabla</translation>
    </message>
    <message>
        <source>Leave them as they are</source>
        <translation>Dejarlos como están</translation>
    </message>
</context>
<context>
    <name>OwnSigningPage</name>
    <message>
        <source>Sign</source>
        <translation>Firmar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>para %1</translation>
    </message>
    <message>
        <source>The PIN or passphrase of this phone</source>
        <translation>El PIN o la frase de contraseña de este teléfono</translation>
    </message>
    <message>
        <source>Signing</source>
        <translation>Firmando</translation>
    </message>
</context>
<context>
    <name>PaperCodeCard</name>
    <message>
        <source>Shown only now. It opens this device&apos;s vault when you have forgotten your PIN or passphrase: keep it on paper, not on this device.</source>
        <translation>Solo se muestra ahora. Abre la bóveda de este equipo si se olvidan el PIN o la frase de contraseña: debe quedar en papel, no en este equipo.</translation>
    </message>
</context>
<context>
    <name>PaperToCutPage</name>
    <message>
        <source>To print and cut</source>
        <translation>Para imprimir y recortar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>They are in English. A signing card is printed when it is made: its code is kept nowhere.</source>
        <translation>Están en inglés. Una tarjeta de firma se imprime al crearla: su código no se guarda en ningún sitio.</translation>
    </message>
    <message>
        <source>A4 paper instead of letter</source>
        <translation>Papel A4 en vez de carta</translation>
    </message>
    <message>
        <source>Open invitations</source>
        <translation>Invitaciones abiertas</translation>
    </message>
    <message numerus="yes">
        <source>%n invitation(s), to be cut apart and given out. Whoever has one can join in that name.</source>
        <translation>
            <numerusform>%n invitación, para recortar y entregar. Quien la tenga puede unirse en ese nombre.</numerusform>
            <numerusform>%n invitaciones, para recortar y entregar. Quien tenga una puede unirse en ese nombre.</numerusform>
        </translation>
    </message>
    <message>
        <source>Pocket stubs, for sites where phones are not allowed</source>
        <translation>Talones de bolsillo, para sedes donde no se permiten teléfonos</translation>
    </message>
    <message>
        <source>How many, a page each</source>
        <translation>Cuántos, una página cada uno</translation>
    </message>
    <message>
        <source>Number of the first; they go on from there</source>
        <translation>Número del primero; los demás siguen</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Save the stubs as PDF</source>
        <translation>Guardar los talones como PDF</translation>
    </message>
</context>
<context>
    <name>PapersPage</name>
    <message>
        <source>Papers and rows</source>
        <translation>Papeles y filas</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Save it</source>
        <translation>Guardarlo</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>For the whole class instead</source>
        <translation>Mejor para todo el grupo</translation>
    </message>
    <message>
        <source>Case log</source>
        <translation>Registro de casos</translation>
    </message>
    <message>
        <source>Cases by specialty, what does not count and why; a student begins a page</source>
        <translation>Casos por especialidad, lo que no cuenta y por qué; cada estudiante empieza una página</translation>
    </message>
    <message>
        <source>Class board</source>
        <translation>Tablero del grupo</translation>
    </message>
    <message>
        <source>Students and targets, as initialed</source>
        <translation>Estudiantes y metas, según las iniciales</translation>
    </message>
    <message>
        <source>Report for the accreditor</source>
        <translation>Informe para la acreditación</translation>
    </message>
    <message>
        <source>Cases by student and target, sites, preceptors, what was changed</source>
        <translation>Casos por estudiante y meta, sedes, preceptores, lo que se cambió</translation>
    </message>
    <message>
        <source>Rows of the case sheets</source>
        <translation>Filas de las hojas de casos</translation>
    </message>
    <message>
        <source>CSV, for a spreadsheet or for counting again</source>
        <translation>CSV, para una hoja de cálculo o para volver a contar</translation>
    </message>
    <message>
        <source>Paper of a completion record</source>
        <translation>Papel de una constancia de cumplimiento</translation>
    </message>
    <message>
        <source>Open the record&apos;s file; it is verified first</source>
        <translation>Abrir el archivo de la constancia; primero se verifica</translation>
    </message>
    <message>
        <source>Papers are in English. They are not de-identified: a date, a site and a rare procedure can point at one patient.</source>
        <translation>Los papeles están en inglés. No están anonimizados: una fecha, una sede y un procedimiento raro pueden señalar a un paciente.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
</context>
<context>
    <name>ParcelsPage</name>
    <message>
        <source>Send and take in</source>
        <translation>Enviar y recibir</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Everything is with your instructor.</source>
        <translation>Tu docente lo tiene todo.</translation>
    </message>
    <message>
        <source>A parcel is sealed: only your program&apos;s instructors can open it, so it may travel any way you like, by message or on a USB stick. Sending it again does no harm.</source>
        <translation>Un paquete va sellado: solo los docentes de tu programa pueden abrirlo, así que puede ir por cualquier vía, un mensaje o una memoria USB. No hace daño enviarlo otra vez.</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Send to my instructor</source>
        <translation>Enviar a mi docente</translation>
    </message>
    <message>
        <source>Take in what came from my instructor</source>
        <translation>Recibir lo que envió mi docente</translation>
    </message>
    <message>
        <source>Saved as %1. Once your instructor has it, their answer comes back in a parcel.</source>
        <translation>Guardado como %1. Cuando tu docente lo tenga, su respuesta vuelve en un paquete.</translation>
    </message>
    <message>
        <source>From screen to camera</source>
        <translation>De pantalla a cámara</translation>
    </message>
    <message>
        <source>Without a file and without a network, when you stand beside each other: one screen shows the parcel as codes, the other device&apos;s camera reads them.</source>
        <translation>Sin archivo y sin red, cuando están uno al lado del otro: una pantalla muestra el paquete como códigos y la cámara del otro dispositivo los lee.</translation>
    </message>
    <message>
        <source>Show my parcel as codes</source>
        <translation>Mostrar mi paquete como códigos</translation>
    </message>
    <message>
        <source>for your instructor&apos;s camera</source>
        <translation>para la cámara de tu docente</translation>
    </message>
    <message>
        <source>Read codes with the camera</source>
        <translation>Leer códigos con la cámara</translation>
    </message>
    <message>
        <source>from your instructor&apos;s screen</source>
        <translation>de la pantalla de tu docente</translation>
    </message>
</context>
<context>
    <name>PeoplePage</name>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>No student is in yet. Invite them one by one, or all at once from a class list.</source>
        <translation>Todavía no hay estudiantes. Invítelos uno a uno o a todos a la vez con la lista de la clase.</translation>
    </message>
    <message>
        <source>Invited, not answered yet</source>
        <translation>Con invitación, sin respuesta todavía</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Personal docente</translation>
    </message>
    <message>
        <source>Invite somebody</source>
        <translation>Invitar a alguien</translation>
    </message>
    <message>
        <source>Take an answer, let somebody in</source>
        <translation>Recibir una respuesta, dar entrada a alguien</translation>
    </message>
    <message>
        <source>Invite a whole class</source>
        <translation>Invitar a toda una clase</translation>
    </message>
</context>
<context>
    <name>PerformedPage</name>
    <message>
        <source>For %1 · sheet %2 of %3</source>
        <translation>Para %1 · hoja %2 de %3</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Para %1</translation>
    </message>
    <message>
        <source>Was this performed?</source>
        <translation>¿Esto es lo que se realizó?</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Correct it</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Correct %1</source>
        <translation>Corregir %1</translation>
    </message>
    <message>
        <source>What was performed instead</source>
        <translation>Lo que se realizó en su lugar</translation>
    </message>
    <message>
        <source>This was performed</source>
        <translation>Esto se realizó</translation>
    </message>
    <message>
        <source>Canceled before incision</source>
        <translation>Cancelado antes de la incisión</translation>
    </message>
    <message>
        <source>Use the phone after degowning and hand washing, never at the field. Counts, sterile technique and what a student may do follow your facility&apos;s policy.</source>
        <translation>Use el teléfono después de quitarse la bata y lavarse las manos, nunca junto al campo estéril. Los conteos, la técnica estéril y lo que puede hacer un estudiante siguen las normas de su centro.</translation>
    </message>
    <message>
        <source>Mark and sign on my own phone</source>
        <translation>Marcar y firmar en mi propio teléfono</translation>
    </message>
    <message>
        <source>I am not signing this</source>
        <translation>No firmo esto</translation>
    </message>
    <message>
        <source>With a reason; the sheet stays open.</source>
        <translation>Con un motivo; la hoja queda abierta.</translation>
    </message>
    <message>
        <source>Give the phone back</source>
        <translation>Devolver el teléfono</translation>
    </message>
    <message>
        <source>Nothing is signed; %1 unlocks it.</source>
        <translation>No se firma nada; %1 lo desbloquea.</translation>
    </message>
    <message>
        <source>Yes, and it was canceled</source>
        <translation>Sí, y se canceló</translation>
    </message>
    <message>
        <source>Yes, mark the skills</source>
        <translation>Sí, marcar las habilidades</translation>
    </message>
</context>
<context>
    <name>PersonPage</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Equipos</translation>
    </message>
    <message>
        <source>End this device</source>
        <translation>Poner fin a este equipo</translation>
    </message>
    <message>
        <source>What was received before stays good; what comes later is not counted. Why is it ended?</source>
        <translation>Lo recibido antes sigue valiendo; lo que llegue después no se cuenta. ¿Por qué se le pone fin?</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Poner fin</translation>
    </message>
    <message>
        <source>The phone is lost</source>
        <translation>El teléfono se perdió</translation>
    </message>
    <message>
        <source>Has left the program</source>
        <translation>Dejó el programa</translation>
    </message>
    <message>
        <source>A new phone goes on where the old one was: end the lost one, then invite again.</source>
        <translation>Un teléfono nuevo sigue donde quedó el anterior: ponga fin al perdido e invite otra vez.</translation>
    </message>
    <message>
        <source>Invite for another device</source>
        <translation>Invitar para otro equipo</translation>
    </message>
    <message>
        <source>Has handed the program over, or lost the device? Take their last parcel in first: what is here stays good, what comes later is not counted.</source>
        <translation>¿Ha entregado el programa o perdido el dispositivo? Reciba antes su último paquete: lo que está aquí sigue valiendo, lo que llegue después no cuenta.</translation>
    </message>
    <message>
        <source>Program code</source>
        <translation>Código del programa</translation>
    </message>
    <message>
        <source>End this director&apos;s devices</source>
        <translation>Dar de baja los dispositivos de esta persona</translation>
    </message>
</context>
<context>
    <name>PlaceCard</name>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Count under %1</source>
        <translation>Contar en %1</translation>
    </message>
</context>
<context>
    <name>PreceptorPage</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>End it</source>
        <translation>Poner fin</translation>
    </message>
    <message>
        <source>What you had received before stays good; the rest is not counted until somebody admits it. Why is it ended?</source>
        <translation>Lo que ya había recibido sigue valiendo; lo demás no se cuenta hasta que alguien lo admita. ¿Por qué se le pone fin?</translation>
    </message>
    <message>
        <source>The card is lost</source>
        <translation>La tarjeta se perdió</translation>
    </message>
    <message>
        <source>Somebody else knows the PIN</source>
        <translation>Otra persona conoce el PIN</translation>
    </message>
    <message>
        <source>Does not work there any more</source>
        <translation>Ya no trabaja allí</translation>
    </message>
    <message>
        <source>Make another signing card</source>
        <translation>Crear otra tarjeta de firma</translation>
    </message>
    <message>
        <source>Standing with the program</source>
        <translation>Situación en el programa</translation>
    </message>
    <message>
        <source>Oriented on: year-month-day; empty: not yet</source>
        <translation>Día de la orientación: año-mes-día; vacío: todavía no</translation>
    </message>
    <message>
        <source>Active</source>
        <translation>Activo</translation>
    </message>
    <message>
        <source>Off: what was signed stays, and a new signature raises a question.</source>
        <translation>Apagado: lo firmado queda, y una firma nueva plantea una pregunta.</translation>
    </message>
    <message>
        <source>Sign: this is how it stands</source>
        <translation>Firmar: esta es la situación</translation>
    </message>
</context>
<context>
    <name>PreceptorsPage</name>
    <message>
        <source>Preceptors and cards</source>
        <translation>Preceptores y tarjetas</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Nobody vouches for these yet</source>
        <translation>Nadie avala todavía a estos</translation>
    </message>
    <message>
        <source>Who may sign</source>
        <translation>Quién puede firmar</translation>
    </message>
    <message>
        <source>No preceptor is known yet. Make a signing card for each, or vouch for their own phone.</source>
        <translation>Todavía no se conoce a ningún preceptor. Cree una tarjeta de firma para cada uno o avale su propio teléfono.</translation>
    </message>
    <message>
        <source>Make a signing card</source>
        <translation>Crear una tarjeta de firma</translation>
    </message>
    <message>
        <source>Vouch for a preceptor&apos;s own phone</source>
        <translation>Avalar el teléfono de un preceptor</translation>
    </message>
</context>
<context>
    <name>ProcedureHit</name>
    <message>
        <source>Favorite: %1</source>
        <translation>Favorito: %1</translation>
    </message>
</context>
<context>
    <name>ProgramCodePage</name>
    <message>
        <source>Step 3 of 4</source>
        <translation>Paso 3 de 4</translation>
    </message>
    <message>
        <source>Type the program code back</source>
        <translation>Escriba el código del programa</translation>
    </message>
    <message>
        <source>Write down the program code</source>
        <translation>Anote el código del programa</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Shown only now. Whoever has it can name the director: write it on paper and lock it away. Without it nobody can take the program over from you, and no completion record can be made.</source>
        <translation>Solo se muestra ahora. Quien lo tiene puede nombrar a la dirección: escríbalo en papel y guárdelo bajo llave. Sin él nadie puede hacerse cargo del programa después de usted, ni se puede hacer ninguna constancia de cumplimiento.</translation>
    </message>
    <message>
        <source>From your paper, so that it is known to be there. Nothing has been made yet.</source>
        <translation>De su papel, para saber que está allí. Todavía no se ha creado nada.</translation>
    </message>
    <message>
        <source>Program code</source>
        <translation>Código del programa</translation>
    </message>
    <message>
        <source>It is not on paper: show another code</source>
        <translation>No está en papel: mostrar otro código</translation>
    </message>
    <message>
        <source>This is the code</source>
        <translation>Este es el código</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>Está en papel</translation>
    </message>
</context>
<context>
    <name>ProgramRulesPage</name>
    <message>
        <source>Rules so far</source>
        <translation>Reglas hasta ahora</translation>
    </message>
    <message>
        <source>Are these the rules?</source>
        <translation>¿Son estas las reglas?</translation>
    </message>
    <message>
        <source>Other rules</source>
        <translation>Otras reglas</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>In force</source>
        <translation>En vigor</translation>
    </message>
    <message>
        <source>No rules have come in yet: take in a parcel first.</source>
        <translation>Todavía no han llegado reglas: reciba antes un paquete.</translation>
    </message>
    <message>
        <source>Before, the newest first</source>
        <translation>Antes, primero las más recientes</translation>
    </message>
    <message>
        <source>Put other rules in force</source>
        <translation>Poner otras reglas en vigor</translation>
    </message>
    <message>
        <source>Read the rules back</source>
        <translation>Releer las reglas</translation>
    </message>
    <message>
        <source>Sign: put them in force</source>
        <translation>Firmar: ponerlas en vigor</translation>
    </message>
    <message>
        <source>Change something</source>
        <translation>Cambiar algo</translation>
    </message>
    <message>
        <source>Leave the rules as they are</source>
        <translation>Dejar las reglas como están</translation>
    </message>
</context>
<context>
    <name>ProofCard</name>
    <message>
        <source>Prove one sheet</source>
        <translation>Probar una sola hoja</translation>
    </message>
    <message>
        <source>The proof holds the record and that sheet; no other sheet can be read or guessed from it.</source>
        <translation>La prueba contiene la constancia y esa hoja; de ella no se puede leer ni adivinar ninguna otra.</translation>
    </message>
    <message>
        <source>Show more of %1</source>
        <translation>Mostrar más de %1</translation>
    </message>
    <message>
        <source>Open a file of proofs</source>
        <translation>Abrir un archivo de pruebas</translation>
    </message>
</context>
<context>
    <name>ReadBackPage</name>
    <message>
        <source>Before you sign</source>
        <translation>Antes de firmar</translation>
    </message>
    <message>
        <source>This is what you sign</source>
        <translation>Esto es lo que firma</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>I scrubbed on this case with this student. These are my own marks for what I saw.</source>
        <translation>Instrumenté este caso con este estudiante. Estas marcas son mías, de lo que vi.</translation>
    </message>
    <message>
        <source>That is right, sign</source>
        <translation>Es correcto, firmar</translation>
    </message>
</context>
<context>
    <name>ReadCodesPage</name>
    <message>
        <source>Read the codes</source>
        <translation>Leer los códigos</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>This device has no camera that can be used. Have the parcel sent as a file, and take in the file.</source>
        <translation>Este dispositivo no tiene una cámara que se pueda usar. El camino es un archivo: pedir el paquete como archivo y recibirlo.</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Take in a file instead</source>
        <translation>Recibir un archivo</translation>
    </message>
</context>
<context>
    <name>ReasonForm</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>RecordCard</name>
    <message>
        <source>The completion record</source>
        <translation>La constancia de cumplimiento</translation>
    </message>
    <message>
        <source>Signed by the program itself, so that anybody can verify it without this app. It shows no case sheet; each can be proven alone, with the file of proofs that the student keeps.</source>
        <translation>La firma el programa mismo, para que cualquiera pueda verificarla sin esta app. No muestra ninguna hoja; cada una se puede probar por separado con el archivo de pruebas que guarda el estudiante.</translation>
    </message>
    <message>
        <source>Program code</source>
        <translation>Código del programa</translation>
    </message>
    <message>
        <source>Make the record</source>
        <translation>Hacer la constancia</translation>
    </message>
    <message>
        <source>Made: %1. Save it now; it is nowhere else yet.</source>
        <translation>Hecha: %1. Guárdela ahora; todavía no está en ninguna otra parte.</translation>
    </message>
    <message>
        <source>Save record, proofs and paper</source>
        <translation>Guardar constancia, pruebas y papel</translation>
    </message>
</context>
<context>
    <name>RefileForm</name>
    <message>
        <source>File it under</source>
        <translation>Archivarla en</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>Why? The student&apos;s choice stays beside it.</source>
        <translation>¿Por qué? La elección del estudiante queda al lado.</translation>
    </message>
    <message>
        <source>Re-file it</source>
        <translation>Archivar ahí</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>RequirementsPage</name>
    <message>
        <source>Changes of requirements</source>
        <translation>Cambios de requisitos</translation>
    </message>
    <message>
        <source>Is this the change?</source>
        <translation>¿Es este el cambio?</translation>
    </message>
    <message>
        <source>Another requirement set</source>
        <translation>Otros requisitos</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Nothing was changed: the set of the program&apos;s rules is in force for every class.</source>
        <translation>No se cambió nada: los requisitos de las reglas del programa están en vigor para todas las clases.</translation>
    </message>
    <message>
        <source>Coming</source>
        <translation>Próximos</translation>
    </message>
    <message>
        <source>So far, the latest first</source>
        <translation>Hasta ahora, el último primero</translation>
    </message>
    <message>
        <source>Only the director changes requirements.</source>
        <translation>Solo la dirección cambia los requisitos.</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Para quién</translation>
    </message>
    <message>
        <source>First day on which it is in force: year-month-day</source>
        <translation>Primer día en que están en vigor: año-mes-día</translation>
    </message>
    <message>
        <source>Requirement set: you decide, nothing is chosen beforehand</source>
        <translation>Requisitos: decide usted, nada está elegido de antemano</translation>
    </message>
    <message>
        <source>Why; everybody in the program sees it</source>
        <translation>Por qué; lo ven todos en el programa</translation>
    </message>
    <message>
        <source>What the set requires</source>
        <translation>Qué exigen estos requisitos</translation>
    </message>
    <message>
        <source>Students and instructors see both tallies: under this set and under the other one. You decide as director which set is in force; this app sets no rule.</source>
        <translation>Estudiantes y docentes ven los dos recuentos: con estos requisitos y con los otros. Usted decide, como dirección, qué requisitos están en vigor; esta aplicación no fija ninguna regla.</translation>
    </message>
    <message>
        <source>Put another set in force</source>
        <translation>Poner otros requisitos en vigor</translation>
    </message>
    <message>
        <source>Read the change back</source>
        <translation>Releer el cambio</translation>
    </message>
    <message>
        <source>Sign: put it in force</source>
        <translation>Firmar: ponerlos en vigor</translation>
    </message>
    <message>
        <source>Change something</source>
        <translation>Cambiar algo</translation>
    </message>
    <message>
        <source>Leave the requirements as they are</source>
        <translation>Dejar los requisitos como están</translation>
    </message>
</context>
<context>
    <name>ReturnPage</name>
    <message>
        <source>Signed by %1</source>
        <translation>Firmado por %1</translation>
    </message>
    <message>
        <source>The preceptor declined to sign</source>
        <translation>No firmada, con motivo</translation>
    </message>
    <message>
        <source>Nothing is signed</source>
        <translation>No se firmó nada</translation>
    </message>
    <message>
        <source>Give the phone back to %1</source>
        <translation>Devuelva el teléfono a %1</translation>
    </message>
    <message>
        <source>Go on marking</source>
        <translation>Seguir marcando</translation>
    </message>
    <message>
        <source>The pack is sealed. What you signed cannot be changed without it showing.</source>
        <translation>El sobre está sellado. Lo que firmó no se puede cambiar sin que se note.</translation>
    </message>
    <message>
        <source>Marks that are not signed are not kept. The record keeps that the phone was with you, and from when to when.</source>
        <translation>Las marcas sin firmar no se guardan. En el registro queda que usted tuvo el teléfono, y desde cuándo hasta cuándo.</translation>
    </message>
    <message>
        <source>%1, your PIN or passphrase</source>
        <translation>%1, tu PIN o frase de contraseña</translation>
    </message>
    <message>
        <source>Checking</source>
        <translation>Comprobando</translation>
    </message>
    <message>
        <source>Open my phone</source>
        <translation>Abrir mi teléfono</translation>
    </message>
    <message>
        <source>Nobody vouches for this preceptor&apos;s phone yet. The sheet shows as signed once an instructor has vouched for its key and their answer is on this phone.</source>
        <translation>Nadie avala todavía el teléfono de este preceptor. La hoja aparece firmada cuando un docente haya avalado su clave y su respuesta esté en este teléfono.</translation>
    </message>
</context>
<context>
    <name>ReviewCard</name>
    <message>
        <source>Mark review asked for</source>
        <translation>Se pide una revisión de marca</translation>
    </message>
    <message>
        <source>The student: &quot;%1&quot;</source>
        <translation>El estudiante: «%1»</translation>
    </message>
    <message>
        <source>Accept the request</source>
        <translation>Aceptar la petición</translation>
    </message>
    <message>
        <source>What do you know about it? The preceptor&apos;s mark stays on the record beside your answer.</source>
        <translation>¿Qué se sabe de ello? La marca del preceptor queda en el registro junto a la respuesta.</translation>
    </message>
    <message>
        <source>Accept it</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>To decline it, initial or return the sheet and say why.</source>
        <translation>Para no aceptarla, ponga iniciales o devuelva la hoja y diga por qué.</translation>
    </message>
</context>
<context>
    <name>Rules</name>
    <message>
        <source>Nothing said about phones</source>
        <translation>Nada dicho sobre teléfonos</translation>
    </message>
    <message>
        <source>Phones allowed in the core</source>
        <translation>Teléfonos permitidos en el núcleo quirúrgico</translation>
    </message>
    <message>
        <source>Phones in the lounge only</source>
        <translation>Teléfonos solo en la sala de descanso</translation>
    </message>
    <message>
        <source>No phones at all: take printed stubs</source>
        <translation>Ningún teléfono: lleve talones impresos</translation>
    </message>
    <message>
        <source>first scrub</source>
        <translation>primera instrumentación</translation>
    </message>
    <message>
        <source>second scrub</source>
        <translation>segunda instrumentación</translation>
    </message>
    <message>
        <source>observation</source>
        <translation>observación</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>Every class</source>
        <translation>Todas las clases</translation>
    </message>
    <message>
        <source>The program&apos;s own procedures do not fit this version of Peelpack and are left out. Tell the director.</source>
        <translation>Los procedimientos propios del programa no encajan con esta versión de Peelpack y se dejan fuera. Avise a la dirección.</translation>
    </message>
</context>
<context>
    <name>RulesForm</name>
    <message>
        <source>What the term is called, such as Spring 2027</source>
        <translation>Cómo se llama el periodo, por ejemplo Primavera 2027</translation>
    </message>
    <message>
        <source>First day of the term: year-month-day</source>
        <translation>Primer día del periodo: año-mes-día</translation>
    </message>
    <message>
        <source>Last day of the term</source>
        <translation>Último día del periodo</translation>
    </message>
    <message>
        <source>Requirement set in force: you decide, nothing is chosen beforehand</source>
        <translation>Requisitos en vigor: decide usted, nada está elegido de antemano</translation>
    </message>
    <message>
        <source>Signatures that count; usually the first two</source>
        <translation>Firmas que cuentan; por lo general las dos primeras</translation>
    </message>
</context>
<context>
    <name>RulesPage</name>
    <message>
        <source>Rules in force</source>
        <translation>Reglas en vigor</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Requirements: %1</source>
        <translation>Requisitos: %1</translation>
    </message>
    <message>
        <source>How signatures count</source>
        <translation>Cómo cuentan las firmas</translation>
    </message>
    <message>
        <source>Instructors and others</source>
        <translation>Docentes y otros</translation>
    </message>
    <message>
        <source>Preceptors whose card or phone is known</source>
        <translation>Preceptores con tarjeta o teléfono conocidos</translation>
    </message>
    <message>
        <source>Older and other rules</source>
        <translation>Reglas anteriores y otras</translation>
    </message>
    <message>
        <source>What was in force before; the director puts other rules in force</source>
        <translation>Lo que estaba en vigor antes; la dirección pone otras reglas en vigor</translation>
    </message>
    <message>
        <source>Changes of requirements</source>
        <translation>Cambios de requisitos</translation>
    </message>
    <message>
        <source>Clinical days</source>
        <translation>Días clínicos</translation>
    </message>
    <message>
        <source>By class, in and out as a calendar</source>
        <translation>Por clase, de un calendario y a un calendario</translation>
    </message>
    <message>
        <source>Sites</source>
        <translation>Sedes</translation>
    </message>
    <message>
        <source>With their rule about phones</source>
        <translation>Con su regla sobre teléfonos</translation>
    </message>
    <message>
        <source>Who may sign</source>
        <translation>Quién puede firmar</translation>
    </message>
    <message>
        <source>Which credential signs which role</source>
        <translation>Qué credencial firma qué función</translation>
    </message>
    <message>
        <source>Own procedures</source>
        <translation>Procedimientos propios</translation>
    </message>
    <message>
        <source>Over the shipped catalogue</source>
        <translation>Sobre el catálogo que viene de serie</translation>
    </message>
</context>
<context>
    <name>RulesReadBack</name>
    <message>
        <source>Requirements: %1</source>
        <translation>Requisitos: %1</translation>
    </message>
    <message>
        <source>How signatures count</source>
        <translation>Cómo cuentan las firmas</translation>
    </message>
    <message>
        <source>You decide as director which set is in force; this app sets no rule.</source>
        <translation>Usted decide, como dirección, qué requisitos están en vigor; esta aplicación no fija ninguna regla.</translation>
    </message>
</context>
<context>
    <name>ScanSheetPage</name>
    <message>
        <source>Scan the sheet&apos;s code</source>
        <translation>Escanee el código de la hoja</translation>
    </message>
    <message>
        <source>Open the sheet&apos;s code</source>
        <translation>Abra el código de la hoja</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>On the student&apos;s phone, after &quot;Was this performed?&quot;: Mark and sign on my own phone. It shows a code, and can send it as a file.</source>
        <translation>En el teléfono del estudiante, tras “¿Esto es lo que se realizó?”: Marcar y firmar en mi propio teléfono. Muestra un código y también puede enviarlo como archivo.</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Scan again</source>
        <translation>Escanear otra vez</translation>
    </message>
    <message>
        <source>A picture or file of the code</source>
        <translation>Una imagen o un archivo del código</translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message>
        <source>The requirement set is no JSON: look at line %1 for a missing comma, quote or bracket.</source>
        <translation>El conjunto de requisitos no es JSON: busque en la línea %1 una coma, comilla o corchete que falte.</translation>
    </message>
    <message>
        <source>The requirement set has the member &quot;%1&quot; twice; keep one of them.</source>
        <translation>El conjunto de requisitos tiene «%1» dos veces; deje uno.</translation>
    </message>
    <message>
        <source>There is no requirement set &quot;%1&quot;; use %2, or the name of a file.</source>
        <translation>No hay ningún conjunto de requisitos «%1»; use uno de estos (%2) o el nombre de un archivo.</translation>
    </message>
    <message>
        <source>The program&apos;s own file %1 is missing; install the program again.</source>
        <translation>Falta el archivo %1 del propio programa; instálelo de nuevo.</translation>
    </message>
    <message>
        <source>Cannot read %1: %2.</source>
        <translation>No se puede leer %1: %2.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 bytes; check that it is the right file.</source>
        <translation>%1 ocupa más de %2 bytes; compruebe que es el archivo correcto.</translation>
    </message>
    <message>
        <source>Cannot write %1: %2.</source>
        <translation>No se puede escribir %1: %2.</translation>
    </message>
    <message>
        <source>The sheet was initialed before this; an instructor decides.</source>
        <translation>La hoja ya tenía las iniciales; decide un docente.</translation>
    </message>
    <message>
        <source>The instructor whose action is in force had not seen this.</source>
        <translation>El docente cuya decisión está en vigor no había visto esto.</translation>
    </message>
    <message>
        <source>Another action was taken in its place.</source>
        <translation>En su lugar vale otra decisión.</translation>
    </message>
    <message>
        <source>This is larger than the format allows.</source>
        <translation>Esto es más grande de lo que permite el formato.</translation>
    </message>
    <message>
        <source>This ends before it is complete; get it again.</source>
        <translation>Esto termina antes de estar completo; pídalo otra vez.</translation>
    </message>
    <message>
        <source>There are bytes after the end; get it again.</source>
        <translation>Hay bytes después del final; pídalo otra vez.</translation>
    </message>
    <message>
        <source>This was made by a newer version of Peelpack; update this one.</source>
        <translation>Esto se hizo con una versión más nueva de Peelpack; actualice esta.</translation>
    </message>
    <message>
        <source>The contents are not in the byte order of the format.</source>
        <translation>El contenido no está en el orden de bytes del formato.</translation>
    </message>
    <message>
        <source>A yes-or-no value is neither yes nor no.</source>
        <translation>Un valor de sí o no no es ni sí ni no.</translation>
    </message>
    <message>
        <source>A number is outside what the format allows.</source>
        <translation>Un número está fuera de lo que permite el formato.</translation>
    </message>
    <message>
        <source>A text holds bytes or control characters that no text has.</source>
        <translation>Un texto contiene bytes o caracteres de control que ningún texto tiene.</translation>
    </message>
    <message>
        <source>A text is longer than the format allows.</source>
        <translation>Un texto es más largo de lo que permite el formato.</translation>
    </message>
    <message>
        <source>A text that must be given, such as a reason, is empty.</source>
        <translation>Está vacío un texto obligatorio, como un motivo.</translation>
    </message>
    <message>
        <source>A list claims more items than the format or the file has room for.</source>
        <translation>Una lista dice tener más elementos de los que caben en el formato o en el archivo.</translation>
    </message>
    <message>
        <source>A list has fewer items than it must have.</source>
        <translation>Una lista tiene menos elementos de los debidos.</translation>
    </message>
    <message>
        <source>The contents are nested too deep.</source>
        <translation>El contenido está anidado a demasiada profundidad.</translation>
    </message>
    <message>
        <source>Items are not in order, or one is there twice.</source>
        <translation>Los elementos no están en orden, o uno está dos veces.</translation>
    </message>
    <message>
        <source>Two values do not go together.</source>
        <translation>Dos valores no van juntos.</translation>
    </message>
    <message>
        <source>This kind of entry does not belong in this stream.</source>
        <translation>Este tipo de anotación no va en este registro.</translation>
    </message>
    <message>
        <source>This is not a Peelpack file of this sort.</source>
        <translation>Este no es un archivo de Peelpack de esta clase.</translation>
    </message>
    <message>
        <source>The file was damaged on its way; get it again.</source>
        <translation>El archivo se dañó por el camino; pídalo otra vez.</translation>
    </message>
    <message>
        <source>Earlier entries are missing; this waits until they come.</source>
        <translation>Faltan anotaciones anteriores; esto espera hasta que lleguen.</translation>
    </message>
    <message>
        <source>The signature does not fit: this was altered, or signed by another.</source>
        <translation>La firma no corresponde: esto fue alterado, o lo firmó otra persona.</translation>
    </message>
    <message>
        <source>A public key in this cannot be used.</source>
        <translation>Una clave pública de aquí no se puede usar.</translation>
    </message>
    <message>
        <source>This belongs to another program.</source>
        <translation>Esto es de otro programa.</translation>
    </message>
    <message>
        <source>This attestation was made for another student.</source>
        <translation>Esta firma se hizo para otro estudiante.</translation>
    </message>
    <message>
        <source>The attestation is not signed by who it names.</source>
        <translation>La firma no es de quien dice ser.</translation>
    </message>
    <message>
        <source>The evidence of a split record does not hold.</source>
        <translation>La prueba de un registro dividido no se sostiene.</translation>
    </message>
    <message>
        <source>This phone&apos;s record split here, often after a restore.</source>
        <translation>El registro de este teléfono se dividió aquí, a menudo tras restaurar una copia.</translation>
    </message>
    <message>
        <source>This record split so often that this branch is not kept; the evidence is.</source>
        <translation>Este registro se dividió tantas veces que esta rama no se guarda; la prueba sí.</translation>
    </message>
    <message>
        <source>Nobody in the program has granted this device anything yet.</source>
        <translation>Nadie del programa ha dado aún ningún permiso a este dispositivo.</translation>
    </message>
    <message>
        <source>Made by a newer Peelpack; kept and passed on.</source>
        <translation>Hecho por un Peelpack más nuevo; se guarda y se pasa adelante.</translation>
    </message>
    <message>
        <source>Who wrote this may not write this kind of entry.</source>
        <translation>Quien escribió esto no puede escribir este tipo de anotación.</translation>
    </message>
    <message>
        <source>This device writes under another student&apos;s id.</source>
        <translation>Este dispositivo escribe con la identidad de otro estudiante.</translation>
    </message>
    <message>
        <source>This concerns a class or site that its writer has no say in.</source>
        <translation>Esto es de una clase o una sede en que su autor no decide.</translation>
    </message>
    <message>
        <source>This came after the device was revoked.</source>
        <translation>Esto llegó después de dar de baja el dispositivo.</translation>
    </message>
    <message>
        <source>This comes after the place where the record split.</source>
        <translation>Esto viene después del punto en que se dividió el registro.</translation>
    </message>
    <message>
        <source>The signing card was revoked before this was delivered.</source>
        <translation>La tarjeta de firma se dio de baja antes de entregarse esto.</translation>
    </message>
    <message>
        <source>Nobody has vouched for who signed this.</source>
        <translation>Nadie ha avalado a quien firmó esto.</translation>
    </message>
    <message>
        <source>Only an entry of a student that is set aside can be admitted.</source>
        <translation>Solo se puede admitir una anotación de estudiante que esté apartada.</translation>
    </message>
    <message>
        <source>This parcel is not for this device.</source>
        <translation>Este paquete no es para este dispositivo.</translation>
    </message>
    <message>
        <source>This parcel&apos;s key does not fit its commitment; it was damaged or tampered with.</source>
        <translation>La clave de este paquete no corresponde; se dañó o se manipuló.</translation>
    </message>
    <message>
        <source>The head of this parcel was altered; get it again.</source>
        <translation>El comienzo de este paquete fue alterado; pídalo otra vez.</translation>
    </message>
    <message>
        <source>The contents of this parcel were altered or cut off; get it again.</source>
        <translation>El contenido de este paquete fue alterado o cortado; pídalo otra vez.</translation>
    </message>
    <message>
        <source>This brings more unknown devices than a program has.</source>
        <translation>Esto trae más dispositivos desconocidos de los que tiene un programa.</translation>
    </message>
    <message>
        <source>This brings more entries than one parcel may.</source>
        <translation>Esto trae más anotaciones de las que admite un paquete.</translation>
    </message>
    <message>
        <source>This is not a signing card; scan the card&apos;s own code.</source>
        <translation>Esta no es una tarjeta de firma; escanee el código de la tarjeta.</translation>
    </message>
    <message>
        <source>This signing card belongs to another program.</source>
        <translation>Esta tarjeta de firma es de otro programa.</translation>
    </message>
    <message>
        <source>A signing card has 16 secret bytes.</source>
        <translation>Una tarjeta de firma tiene 16 bytes secretos.</translation>
    </message>
    <message>
        <source>The PIN does not fit this signing card; try again.</source>
        <translation>El PIN no es el de esta tarjeta de firma; inténtelo otra vez.</translation>
    </message>
    <message>
        <source>A code has 128 bits.</source>
        <translation>Un código tiene 128 bits.</translation>
    </message>
    <message>
        <source>A code has 7 groups of 5 letters and digits; check what you typed.</source>
        <translation>Un código tiene 7 grupos de 5 letras y cifras; revise lo que escribió.</translation>
    </message>
    <message>
        <source>A code has 7 groups of 5 letters and digits; some are missing.</source>
        <translation>Un código tiene 7 grupos de 5 letras y cifras; faltan algunos.</translation>
    </message>
    <message>
        <source>Group %1 of the code is mistyped; compare it again.</source>
        <translation>El grupo %1 del código está mal escrito; compárelo otra vez.</translation>
    </message>
    <message>
        <source>This is not a program code; it may be a vault code or a card&apos;s.</source>
        <translation>Este no es un código de programa; quizá sea de una bóveda o de una tarjeta.</translation>
    </message>
    <message>
        <source>This is not a vault code; it may be a program code or a card&apos;s.</source>
        <translation>Este no es un código de bóveda; quizá sea de un programa o de una tarjeta.</translation>
    </message>
    <message>
        <source>This is not the code of a signing card; it may be a program or vault code.</source>
        <translation>Este no es el código de una tarjeta de firma; quizá sea de un programa o de una bóveda.</translation>
    </message>
    <message>
        <source>The stored public keys do not belong to the stored seeds; nothing is signed with them.</source>
        <translation>Las claves públicas guardadas no corresponden a las semillas guardadas; no se firma nada con ellas.</translation>
    </message>
    <message>
        <source>This is not an invitation; ask for a new one.</source>
        <translation>Esta no es una invitación; pida una nueva.</translation>
    </message>
    <message>
        <source>This is not a reply to an invitation; scan it again.</source>
        <translation>Esta no es la respuesta a una invitación; escanéela otra vez.</translation>
    </message>
    <message>
        <source>The invitation has expired; make a new one.</source>
        <translation>La invitación ha vencido; haga una nueva.</translation>
    </message>
    <message>
        <source>The reply is from somebody else&apos;s invitation.</source>
        <translation>La respuesta es de la invitación de otra persona.</translation>
    </message>
    <message>
        <source>The reply was not made with this invitation.</source>
        <translation>La respuesta no se hizo con esta invitación.</translation>
    </message>
    <message>
        <source>Nothing can be sealed to the key in the reply.</source>
        <translation>No se puede sellar nada para la clave de la respuesta.</translation>
    </message>
    <message>
        <source>The reply was not signed by the device that it names.</source>
        <translation>La respuesta no la firmó el dispositivo que nombra.</translation>
    </message>
    <message>
        <source>The cost asked for unlocking is above 64 MiB or 4 passes; this is not one of our files.</source>
        <translation>El costo pedido para desbloquear pasa de 64 MiB o 4 vueltas; este archivo no es nuestro.</translation>
    </message>
    <message>
        <source>The cost asked for unlocking is too low to protect anything.</source>
        <translation>El costo pedido para desbloquear es tan bajo que no protege nada.</translation>
    </message>
    <message>
        <source>A salt has 16 bytes and a stretched key 16 to 1024.</source>
        <translation>Una sal tiene 16 bytes y una clave derivada de 16 a 1024.</translation>
    </message>
    <message>
        <source>There is not enough memory to check the PIN; close other apps and try again.</source>
        <translation>No hay memoria para comprobar el PIN; cierre otras aplicaciones e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>A PIN has digits only.</source>
        <translation>Un PIN solo tiene cifras.</translation>
    </message>
    <message>
        <source>A PIN has 6 to 12 digits.</source>
        <translation>Un PIN tiene de 6 a 12 cifras.</translation>
    </message>
    <message>
        <source>That PIN is guessed first; choose digits without a pattern.</source>
        <translation>Ese PIN es de los primeros que se adivinan; elija cifras sin un patrón.</translation>
    </message>
    <message>
        <source>A sealing key has 32 bytes and a nonce 24.</source>
        <translation>Una clave de sellado tiene 32 bytes y un nonce 24.</translation>
    </message>
    <message>
        <source>A sealing seed has 32 bytes.</source>
        <translation>Una semilla de sellado tiene 32 bytes.</translation>
    </message>
    <message>
        <source>The other side&apos;s sealing key is of small order and is refused.</source>
        <translation>La clave de sellado del otro lado es de orden pequeño y se rechaza.</translation>
    </message>
    <message>
        <source>The sealed bytes were damaged, or the key is another.</source>
        <translation>Los bytes sellados se dañaron, o la clave es otra.</translation>
    </message>
    <message>
        <source>A signing seed has 32 bytes.</source>
        <translation>Una semilla de firma tiene 32 bytes.</translation>
    </message>
    <message>
        <source>The stored public key does not belong to the stored seed; nothing is signed with it.</source>
        <translation>La clave pública guardada no corresponde a la semilla guardada; no se firma nada con ella.</translation>
    </message>
    <message>
        <source>The PDF cannot be drawn.</source>
        <translation>No se puede dibujar el PDF.</translation>
    </message>
    <message>
        <source>Printing was canceled; nothing was written.</source>
        <translation>Se canceló la impresión; no se escribió nada.</translation>
    </message>
    <message>
        <source>Only an instructor or the director can do this.</source>
        <translation>Solo un docente o el director puede hacer esto.</translation>
    </message>
    <message>
        <source>This needs a reason; it stays beside the sheet for good.</source>
        <translation>Esto necesita un motivo; queda para siempre junto a la hoja.</translation>
    </message>
    <message>
        <source>The sheet is void; nothing more can be done with it.</source>
        <translation>La hoja está anulada; ya no se puede hacer nada con ella.</translation>
    </message>
    <message>
        <source>There is no such sheet here.</source>
        <translation>Aquí no existe esa hoja.</translation>
    </message>
    <message>
        <source>The student took the sheet back; void it, or ask them to open another.</source>
        <translation>El estudiante retiró la hoja; anúlela, o pídale que abra otra.</translation>
    </message>
    <message>
        <source>Nothing is changed.</source>
        <translation>No se cambia nada.</translation>
    </message>
    <message>
        <source>Nobody has asked for a review of that mark, or it was answered already.</source>
        <translation>Nadie pidió revisar esa marca, o ya se respondió.</translation>
    </message>
    <message>
        <source>The requirement set in force, %1, is not a shipped one; give its file with --set.</source>
        <translation>El conjunto de requisitos en vigor, %1, no viene incluido; indique su archivo con --set.</translation>
    </message>
    <message>
        <source>The requirement set at hand is not the one in force as %1. Give its file with --set, or put the set in force again with &quot;program rules&quot;.</source>
        <translation>El conjunto de requisitos que hay no es el que está en vigor como %1. Indique su archivo con --set, o póngalo otra vez en vigor con &quot;program rules&quot;.</translation>
    </message>
    <message>
        <source>No rules are in force.</source>
        <translation>No hay reglas en vigor.</translation>
    </message>
    <message>
        <source>Nothing of this student is here.</source>
        <translation>Aquí no hay nada de este estudiante.</translation>
    </message>
    <message>
        <source>Only the director decides who has met the requirements.</source>
        <translation>Solo el director decide quién cumple los requisitos.</translation>
    </message>
    <message>
        <source>Nothing is short: leave the exception out.</source>
        <translation>No falta nada: quite la excepción.</translation>
    </message>
    <message>
        <source>Cases are short: a completion needs an exception with its reason.</source>
        <translation>Faltan casos: para darlos por completos hace falta una excepción con su motivo.</translation>
    </message>
    <message>
        <source>This device&apos;s decisions do not count any more: another is the director&apos;s. Take in a colleague&apos;s parcel, or see &quot;program show&quot;.</source>
        <translation>Las decisiones de este dispositivo ya no cuentan: el del director es otro. Reciba el paquete de un colega, o vea &quot;program show&quot;.</translation>
    </message>
    <message>
        <source>That is not the code of this program.</source>
        <translation>Ese no es el código de este programa.</translation>
    </message>
    <message>
        <source>A later record of this student was made with this vault; it is superseded without being named.</source>
        <translation>Con esta bóveda se hizo un certificado posterior de este estudiante; se reemplaza sin nombrarlo.</translation>
    </message>
    <message>
        <source>No instructor is known here yet.</source>
        <translation>Aquí todavía no se conoce a ningún docente.</translation>
    </message>
    <message>
        <source>This student has no phone that is still granted.</source>
        <translation>Este estudiante no tiene ningún teléfono con permiso.</translation>
    </message>
    <message>
        <source>No other instructor is known here.</source>
        <translation>Aquí no se conoce a ningún otro docente.</translation>
    </message>
    <message>
        <source>This vault is somebody&apos;s record in a program; a preceptor&apos;s phone has one of its own.</source>
        <translation>Esta bóveda es el registro de alguien en un programa; el teléfono de un preceptor tiene la suya.</translation>
    </message>
    <message>
        <source>Damaged: %1.</source>
        <translation>Dañado: %1.</translation>
    </message>
    <message>
        <source>Not readable: number %1 of what was signed here.</source>
        <translation>No se puede leer: el número %1 de lo que se firmó aquí.</translation>
    </message>
    <message>
        <source>What was signed cannot be read back; nothing was signed.</source>
        <translation>Lo firmado no se puede volver a leer; no se firmó nada.</translation>
    </message>
    <message>
        <source>This vault belongs to no program yet.</source>
        <translation>Esta bóveda aún no es de ningún programa.</translation>
    </message>
    <message>
        <source>The settings of this vault are damaged.</source>
        <translation>Los ajustes de esta bóveda están dañados.</translation>
    </message>
    <message>
        <source>Damaged: the certificates of the program.</source>
        <translation>Dañado: los certificados del programa.</translation>
    </message>
    <message>
        <source>Not readable in its place: what follows entry %1 of a feed that is damaged before it.</source>
        <translation>No se puede leer en su sitio: lo que sigue a la anotación %1 de un registro dañado antes de ella.</translation>
    </message>
    <message>
        <source>This phone&apos;s record split, often after a restore, so nothing more is signed with its keys: join again, and go on where you are.</source>
        <translation>El registro de este teléfono se dividió, a menudo tras restaurar una copia, y ya no se firma nada con sus claves: únase otra vez y siga donde está.</translation>
    </message>
    <message>
        <source>A part of this device&apos;s own record is damaged: take in a parcel that has your history, and join again.</source>
        <translation>Una parte del registro de este dispositivo está dañada: reciba un paquete con su historial y únase otra vez.</translation>
    </message>
    <message>
        <source>This vault belongs to somebody or some program already; join with a new vault.</source>
        <translation>Esta bóveda ya es de alguien o de un programa; únase con una bóveda nueva.</translation>
    </message>
    <message>
        <source>A director invites anybody, an instructor everybody but instructors; a new director takes over with the program code.</source>
        <translation>Un director invita a cualquiera; un docente, a todos menos a docentes; un director nuevo asume con el código del programa.</translation>
    </message>
    <message>
        <source>An invitation needs a name, and a class or site unless it is for an instructor of the whole program.</source>
        <translation>Una invitación necesita un nombre, y una clase o una sede, salvo que sea para un docente de todo el programa.</translation>
    </message>
    <message>
        <source>This reply answers no invitation that is open here: it was answered already, has expired, or was given out on another device.</source>
        <translation>Esta respuesta no es de ninguna invitación abierta aquí: ya se respondió, venció o se dio en otro dispositivo.</translation>
    </message>
    <message>
        <source>A sheet is named by at least 4 digits of its id.</source>
        <translation>Una hoja se nombra con al menos 4 cifras de su identificador.</translation>
    </message>
    <message>
        <source>Several sheets begin with %1; give more digits.</source>
        <translation>Varias hojas empiezan por %1; escriba más cifras.</translation>
    </message>
    <message>
        <source>There is no sheet %1 here.</source>
        <translation>Aquí no hay ninguna hoja %1.</translation>
    </message>
    <message>
        <source>The sheet was withdrawn; there is nothing to sign.</source>
        <translation>La hoja se retiró; no hay nada que firmar.</translation>
    </message>
    <message>
        <source>Nothing is marked; mark at least one skill, or decline with a reason.</source>
        <translation>No hay nada marcado; marque al menos una habilidad, o no firme y dé un motivo.</translation>
    </message>
    <message>
        <source>The signer&apos;s name is missing.</source>
        <translation>Falta el nombre de quien firma.</translation>
    </message>
    <message>
        <source>Too many wrong PINs on this phone: wait %1 seconds, or let the preceptor sign on their own phone.</source>
        <translation>Demasiados PIN incorrectos en este teléfono: espere %1 segundos, o que el preceptor firme en su propio teléfono.</translation>
    </message>
    <message>
        <source>That is not the PIN of this card. The try is kept in the journal.</source>
        <translation>Ese no es el PIN de esta tarjeta. El intento queda registrado.</translation>
    </message>
    <message>
        <source>This card was revoked; the preceptor needs a new one.</source>
        <translation>Esta tarjeta se dio de baja; el preceptor necesita una nueva.</translation>
    </message>
    <message>
        <source>This answer is for another sheet.</source>
        <translation>Esta respuesta es de otra hoja.</translation>
    </message>
    <message>
        <source>This answer was taken in already.</source>
        <translation>Esta respuesta ya se recibió.</translation>
    </message>
    <message>
        <source>There is no such student here.</source>
        <translation>Aquí no existe ese estudiante.</translation>
    </message>
    <message>
        <source>This file is not a Peelpack vault.</source>
        <translation>Este archivo no es una bóveda de Peelpack.</translation>
    </message>
    <message>
        <source>The vault&apos;s tables are damaged; use a copy of the file, or join anew and have your history sent back.</source>
        <translation>Las tablas de la bóveda están dañadas; use una copia del archivo, o únase de nuevo y pida que le envíen su historial.</translation>
    </message>
    <message>
        <source>Another Peelpack has this vault open; close it first.</source>
        <translation>Otro Peelpack tiene abierta esta bóveda; ciérrelo primero.</translation>
    </message>
    <message>
        <source>There is no space left; nothing was saved. Free some space and try again.</source>
        <translation>No queda espacio; no se guardó nada. Libere espacio e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The vault cannot be written: its file or folder is read-only.</source>
        <translation>No se puede escribir en la bóveda: su archivo o carpeta es de solo lectura.</translation>
    </message>
    <message>
        <source>The vault cannot be opened; check that you may read and write its folder.</source>
        <translation>No se puede abrir la bóveda; compruebe que puede leer y escribir en su carpeta.</translation>
    </message>
    <message>
        <source>The vault&apos;s storage failed; what was not said to be saved was not saved.</source>
        <translation>Falló el almacenamiento de la bóveda; lo que no se dio por guardado no se guardó.</translation>
    </message>
    <message>
        <source>The vault cannot be used: %1.</source>
        <translation>No se puede usar la bóveda: %1.</translation>
    </message>
    <message>
        <source>There is no vault in %1.</source>
        <translation>No hay ninguna bóveda en %1.</translation>
    </message>
    <message>
        <source>This vault was made by a newer Peelpack; use that one. Nothing was changed.</source>
        <translation>Esta bóveda se hizo con un Peelpack más nuevo; use ese. No se cambió nada.</translation>
    </message>
    <message>
        <source>There is a file %1 already.</source>
        <translation>Ya existe un archivo %1.</translation>
    </message>
    <message>
        <source>Cannot make the file %1.</source>
        <translation>No se puede crear el archivo %1.</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver is not installed.</source>
        <translation>No está instalado el controlador SQLite de Qt.</translation>
    </message>
    <message>
        <source>The vault&apos;s storage failed before; close Peelpack and open it again.</source>
        <translation>El almacenamiento de la bóveda falló antes; cierre Peelpack y ábralo otra vez.</translation>
    </message>
    <message>
        <source>row %1 (a certificate)</source>
        <translation>fila %1 (un certificado)</translation>
    </message>
    <message>
        <source>row %1 (which feed %2 is)</source>
        <translation>fila %1 (cuál es el registro %2)</translation>
    </message>
    <message>
        <source>row %1 (entry %2 of feed %3)</source>
        <translation>fila %1 (anotación %2 del registro %3)</translation>
    </message>
    <message>
        <source>row %1 (missing)</source>
        <translation>fila %1 (falta)</translation>
    </message>
    <message>
        <source>rows %1 to %2 (missing)</source>
        <translation>filas %1 a %2 (faltan)</translation>
    </message>
    <message>
        <source>The list of the vault&apos;s rows is damaged.</source>
        <translation>La lista de filas de la bóveda está dañada.</translation>
    </message>
    <message>
        <source>the list of rows</source>
        <translation>la lista de filas</translation>
    </message>
    <message>
        <source>The list of the vault&apos;s rows is damaged, so nothing more is written to it: join anew and have your history sent back.</source>
        <translation>La lista de filas de la bóveda está dañada y ya no se escribe nada en ella: únase de nuevo y pida que le envíen su historial.</translation>
    </message>
    <message>
        <source>What was saved does not read back; check the device&apos;s storage.</source>
        <translation>Lo guardado no se puede volver a leer; revise el almacenamiento del dispositivo.</translation>
    </message>
    <message>
        <source>Cannot read the install mark in %1.</source>
        <translation>No se puede leer la marca de instalación en %1.</translation>
    </message>
    <message>
        <source>Cannot write the install mark in %1.</source>
        <translation>No se puede escribir la marca de instalación en %1.</translation>
    </message>
    <message>
        <source>The start of the vault is damaged; use a copy of the file, or join anew and have your history sent back.</source>
        <translation>El comienzo de la bóveda está dañado; use una copia del archivo, o únase de nuevo y pida que le envíen su historial.</translation>
    </message>
    <message>
        <source>the settings of this device</source>
        <translation>los ajustes de este dispositivo</translation>
    </message>
    <message>
        <source>the parcels that wait</source>
        <translation>los paquetes en espera</translation>
    </message>
    <message>
        <source>the list of settings and of parcels that wait</source>
        <translation>la lista de ajustes y de paquetes en espera</translation>
    </message>
    <message>
        <source>a setting of this device</source>
        <translation>un ajuste de este dispositivo</translation>
    </message>
    <message>
        <source>a parcel that waits</source>
        <translation>un paquete en espera</translation>
    </message>
    <message>
        <source>What opens the vault is damaged; use the vault code, or a copy of the file.</source>
        <translation>Está dañado lo que abre la bóveda; use el código de la bóveda, o una copia del archivo.</translation>
    </message>
    <message>
        <source>This vault is a copy, or was moved here from another device: it opens with its vault code only, and cannot sign until it is set up anew.</source>
        <translation>Esta bóveda es una copia, o se trajo de otro dispositivo: solo se abre con su código y no puede firmar hasta configurarla de nuevo.</translation>
    </message>
    <message>
        <source>That is not the PIN.</source>
        <translation>Ese no es el PIN.</translation>
    </message>
    <message>
        <source>That is not the passphrase.</source>
        <translation>Esa no es la frase de contraseña.</translation>
    </message>
    <message>
        <source>The part that the vault code opens is damaged; use the passphrase or PIN, or a copy of the file.</source>
        <translation>Está dañada la parte que abre el código de la bóveda; use la frase de contraseña o el PIN, o una copia del archivo.</translation>
    </message>
    <message>
        <source>That is the code of another vault.</source>
        <translation>Ese es el código de otra bóveda.</translation>
    </message>
    <message>
        <source>This vault is a copy, or was moved here from another device: it can be read, and cannot sign until it is set up anew.</source>
        <translation>Esta bóveda es una copia, o se trajo de otro dispositivo: se puede leer, pero no puede firmar hasta configurarla de nuevo.</translation>
    </message>
    <message>
        <source>Too many wrong tries: wait %1 seconds.</source>
        <translation>Demasiados intentos fallidos: espere %1 segundos.</translation>
    </message>
    <message>
        <source>Too many wrong tries: wait %1 minutes.</source>
        <translation>Demasiados intentos fallidos: espere %1 minutos.</translation>
    </message>
    <message>
        <source>After 10 wrong tries only the vault code opens this vault.</source>
        <translation>Después de 10 intentos fallidos, esta bóveda solo se abre con su código.</translation>
    </message>
    <message>
        <source>The new vault could not be written in full; check the space that is left, and try again.</source>
        <translation>No se pudo escribir entera la bóveda nueva; compruebe el espacio que queda e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The keys of this device are damaged: join anew, and your history is kept.</source>
        <translation>Las claves de este dispositivo están dañadas: únase de nuevo y conservará su historial.</translation>
    </message>
    <message>
        <source>A passphrase has at least 8 characters; a few words that do not belong together are good.</source>
        <translation>Una frase de contraseña tiene al menos 8 caracteres; van bien unas palabras sin relación entre sí.</translation>
    </message>
    <message>
        <source>A passphrase has at most 200 characters.</source>
        <translation>Una frase de contraseña tiene como mucho 200 caracteres.</translation>
    </message>
    <message>
        <source>That passphrase is guessed first; take a few words that do not belong together.</source>
        <translation>Esa frase es de las primeras que se adivinan; tome unas palabras sin relación entre sí.</translation>
    </message>
    <message>
        <source>A passphrase has more than digits; digits alone are a PIN, which is weaker.</source>
        <translation>Una frase de contraseña no lleva solo cifras; solo cifras es un PIN, que es más débil.</translation>
    </message>
    <message>
        <source>The case was canceled before incision.</source>
        <translation>El caso se canceló antes de la incisión.</translation>
    </message>
    <message>
        <source>Another student has a first scrub on this operation. Say why both count; it stays beside the sheet for good.</source>
        <translation>Otro estudiante tiene una primera instrumentación en esta operación. Diga por qué cuentan las dos; queda junto a la hoja para siempre.</translation>
    </message>
    <message>
        <source>You signed this sheet yourself. Nobody initials alone what they signed: another instructor initials it.</source>
        <translation>Usted firmó esta hoja. Nadie pone solo sus iniciales en lo que firmó: las pone otro docente.</translation>
    </message>
    <message>
        <source>The sheet was imported from a paper log and has no marks to change; void it if its role is wrong.</source>
        <translation>La hoja se importó de un registro en papel y no tiene marcas que cambiar; anúlela si su rol es incorrecto.</translation>
    </message>
    <message>
        <source>Only an instructor or the director can admit an entry.</source>
        <translation>Solo un docente o la dirección puede admitir un elemento.</translation>
    </message>
    <message>
        <source>There is no such entry here.</source>
        <translation>Aquí no hay tal elemento.</translation>
    </message>
    <message>
        <source>This entry counts already.</source>
        <translation>Este elemento ya cuenta.</translation>
    </message>
    <message>
        <source>Only what a student&apos;s own device wrote can be admitted; anything else is written again by whoever may.</source>
        <translation>Solo se puede admitir lo que escribió el dispositivo del propio estudiante; lo demás lo escribe de nuevo quien pueda hacerlo.</translation>
    </message>
    <message>
        <source>A student cannot vouch for a preceptor.</source>
        <translation>Un estudiante no puede avalar a un preceptor.</translation>
    </message>
    <message>
        <source>Only an instructor or the director can end a card.</source>
        <translation>Solo un docente o la dirección puede dar de baja una tarjeta.</translation>
    </message>
    <message>
        <source>This preceptor has no card or phone that is still good.</source>
        <translation>Este preceptor no tiene ninguna tarjeta ni teléfono que aún sirva.</translation>
    </message>
    <message>
        <source>An exception needs its reason; it stands in the journal and in the record for good.</source>
        <translation>Una excepción necesita su motivo; queda para siempre en el diario y en la constancia.</translation>
    </message>
    <message>
        <source>Only an instructor or the director can end a device.</source>
        <translation>Solo un docente o la dirección puede dar de baja un dispositivo.</translation>
    </message>
    <message>
        <source>This person has no device that is still granted.</source>
        <translation>Esta persona no tiene ningún dispositivo admitido.</translation>
    </message>
    <message>
        <source>Only an instructor or the director imports a paper log.</source>
        <translation>Solo un docente o la dirección importa un registro en papel.</translation>
    </message>
    <message>
        <source>Only an instructor or the director keeps what a preceptor says.</source>
        <translation>Solo un docente o la dirección guarda lo que dice un preceptor.</translation>
    </message>
    <message>
        <source>There is no such signature here.</source>
        <translation>Aquí no hay tal firma.</translation>
    </message>
    <message>
        <source>Only of what a card signed can its preceptor say so here; void the sheet with a reason.</source>
        <translation>Eso solo lo puede decir aquí el preceptor de lo que firmó una tarjeta; anule la hoja con un motivo.</translation>
    </message>
    <message>
        <source>Only the director changes this rule.</source>
        <translation>Solo la dirección cambia esta regla.</translation>
    </message>
    <message>
        <source>Only the director, an instructor or a coordinator changes this rule.</source>
        <translation>Solo la dirección, un docente o un coordinador cambia esta regla.</translation>
    </message>
    <message>
        <source>The clinical day of %1 at %2 stands twice with different ends.</source>
        <translation>El día clínico del %1 en %2 está dos veces con horas de fin distintas.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; stands twice; say it once.</source>
        <translation>«%1» está dos veces; dígalo una sola vez.</translation>
    </message>
    <message>
        <source>Only an instructor or the director draws sheets to confirm.</source>
        <translation>Solo un docente o la dirección sortea hojas por confirmar.</translation>
    </message>
    <message>
        <source>That is another code; nothing was made.</source>
        <translation>Ese es otro código; no se ha creado nada.</translation>
    </message>
    <message>
        <source>The sheet was imported from a paper log; nobody signs it here.</source>
        <translation>La hoja se importó de un registro en papel; aquí no la firma nadie.</translation>
    </message>
    <message>
        <source>The sheet was imported: the student can only withdraw it.</source>
        <translation>La hoja se importó: el estudiante solo puede retirarla.</translation>
    </message>
    <message>
        <source>The sheet is the student&apos;s own.</source>
        <translation>La hoja es del propio estudiante.</translation>
    </message>
    <message>
        <source>The sheet was imported before.</source>
        <translation>La hoja ya se había importado.</translation>
    </message>
    <message>
        <source>The sheet was imported: it has no marks to change.</source>
        <translation>La hoja se importó: no tiene marcas que cambiar.</translation>
    </message>
    <message>
        <source>the name is missing; fill it in.</source>
        <translation>falta el nombre; complételo.</translation>
    </message>
    <message>
        <source>the class is missing; fill it in.</source>
        <translation>falta la clase; complétela.</translation>
    </message>
    <message>
        <source>this name stands twice; tell the two apart, by an initial for instance.</source>
        <translation>este nombre está dos veces; distinga a los dos, por ejemplo con una inicial.</translation>
    </message>
    <message>
        <source>the list needs a header row with the columns name and class.</source>
        <translation>la lista necesita una fila de títulos con las columnas name y class.</translation>
    </message>
    <message>
        <source>No site of that name is listed.</source>
        <translation>No hay ninguna sede con ese nombre en la lista.</translation>
    </message>
    <message>
        <source>That credential is not on the list.</source>
        <translation>Esa credencial no está en la lista.</translation>
    </message>
    <message>
        <source>%1: The calendar is larger than 16 MiB.</source>
        <translation>%1: el calendario supera 16 MiB.</translation>
    </message>
    <message>
        <source>%1: The calendar is not UTF-8 text; export it as iCalendar (.ics).</source>
        <translation>%1: el calendario no es texto UTF-8; expórtelo como iCalendar (.ics).</translation>
    </message>
    <message>
        <source>%1: That is no calendar; export it as iCalendar (.ics).</source>
        <translation>%1: no es un calendario; expórtelo como iCalendar (.ics).</translation>
    </message>
    <message>
        <source>%1: There is no time zone &quot;%2&quot;; name one like America/Chicago.</source>
        <translation>%1: no existe la zona horaria «%2»; escriba una como America/Chicago.</translation>
    </message>
    <message>
        <source>%1: the day %2 names no place; fill it in, or say the site of such days.</source>
        <translation>%1: el día %2 no nombra ningún lugar; complételo o diga la sede de esos días.</translation>
    </message>
    <message>
        <source>The name of a site is not well-formed text.</source>
        <translation>El nombre de una sede no es texto bien formado.</translation>
    </message>
    <message>
        <source>It has no day on which it starts.</source>
        <translation>No tiene día de comienzo.</translation>
    </message>
    <message>
        <source>Its time is in UTC; say in which time zone the site is.</source>
        <translation>Su hora está en UTC; diga en qué zona horaria está la sede.</translation>
    </message>
    <message>
        <source>It ends before it starts, or lasts longer than a day; make an event of each day.</source>
        <translation>Termina antes de empezar o dura más de un día; haga un evento de cada día.</translation>
    </message>
    <message>
        <source>the date is none; write it like 2026-03-12.</source>
        <translation>la fecha no vale; escríbala como 2026-03-12.</translation>
    </message>
    <message>
        <source>the site is missing; fill it in, or say the site of such days.</source>
        <translation>falta la sede; complétela o diga la sede de esos días.</translation>
    </message>
    <message>
        <source>a time is none; write it like 07:30.</source>
        <translation>una hora no vale; escríbala como 07:30.</translation>
    </message>
    <message>
        <source>the end stands without a start; fill the start in.</source>
        <translation>el final está sin comienzo; complete el comienzo.</translation>
    </message>
    <message>
        <source>the table needs a header row with the column %1.</source>
        <translation>la tabla necesita una fila de títulos con la columna %1.</translation>
    </message>
    <message>
        <source>the file is UTF-16; save it as CSV UTF-8.</source>
        <translation>el archivo es UTF-16; guárdelo como CSV UTF-8.</translation>
    </message>
    <message>
        <source>the bytes are not UTF-8; save the file as CSV UTF-8.</source>
        <translation>los bytes no son UTF-8; guarde el archivo como CSV UTF-8.</translation>
    </message>
    <message>
        <source>there is a NUL byte; save the file as CSV UTF-8.</source>
        <translation>hay un byte NUL; guarde el archivo como CSV UTF-8.</translation>
    </message>
    <message>
        <source>a quoted field is never closed; add the closing quote, or remove the opening one.</source>
        <translation>un campo entre comillas no se cierra; añada la comilla final o quite la primera.</translation>
    </message>
    <message>
        <source>a carriage return stands alone; end lines with CRLF or LF.</source>
        <translation>hay un retorno de carro suelto; termine las líneas con CRLF o LF.</translation>
    </message>
    <message>
        <source>a field is longer than %1 bytes; shorten it, or look for a quote that is never closed.</source>
        <translation>un campo supera %1 bytes; acórtelo o busque una comilla que no se cierra.</translation>
    </message>
    <message>
        <source>there is a quote inside a field that is not quoted; quote the whole field and double the quote.</source>
        <translation>hay una comilla dentro de un campo sin comillas; ponga el campo entero entre comillas y duplique la comilla.</translation>
    </message>
    <message>
        <source>there is text after a closing quote; double a quote that belongs to the text.</source>
        <translation>hay texto después de la comilla final; duplique la comilla que es parte del texto.</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, línea %2: %3</translation>
    </message>
    <message>
        <source>%1, event &quot;%2&quot;: %3</source>
        <translation>%1, evento «%2»: %3</translation>
    </message>
    <message>
        <source>Only the program code ends a director&apos;s device.</source>
        <translation>Solo el código del programa da de baja el dispositivo de una dirección.</translation>
    </message>
    <message>
        <source>Only a director ends another director&apos;s device.</source>
        <translation>Solo una dirección da de baja el dispositivo de otra.</translation>
    </message>
    <message>
        <source>The table has more than 48 KiB; leave out what the shipped catalogue says already.</source>
        <translation>La tabla tiene más de 48 KiB; omita lo que el catálogo de serie ya dice.</translation>
    </message>
    <message>
        <source>No table of procedures is in force: there is nothing to take away.</source>
        <translation>No hay tabla de procedimientos vigente: no hay nada que quitar.</translation>
    </message>
    <message>
        <source>This table is in force already.</source>
        <translation>Esta tabla ya está vigente.</translation>
    </message>
    <message>
        <source>This invitation is not open any more.</source>
        <translation>Esta invitación ya no está abierta.</translation>
    </message>
</context>
<context>
    <name>SetUpDirectorPage</name>
    <message>
        <source>Step 4 of 4</source>
        <translation>Paso 4 de 4</translation>
    </message>
    <message>
        <source>You and this device</source>
        <translation>Usted y este equipo</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Your name, as it stands under what you decide</source>
        <translation>Su nombre, como figura bajo lo que decide</translation>
    </message>
    <message>
        <source>Setting up the program</source>
        <translation>Creando el programa</translation>
    </message>
    <message>
        <source>Set up the program</source>
        <translation>Crear el programa</translation>
    </message>
</context>
<context>
    <name>SetUpRulesPage</name>
    <message>
        <source>Step 2 of 4</source>
        <translation>Paso 2 de 4</translation>
    </message>
    <message>
        <source>Step 1 of 4</source>
        <translation>Paso 1 de 4</translation>
    </message>
    <message>
        <source>Are these the rules?</source>
        <translation>¿Son estas las reglas?</translation>
    </message>
    <message>
        <source>Set up a program</source>
        <translation>Crear un programa</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>For the director. It takes ten minutes: the rules, the program code, you. Have paper and a pen at hand.</source>
        <translation>Para la dirección. Lleva diez minutos: las reglas, el código del programa, usted. Tenga a mano papel y bolígrafo.</translation>
    </message>
    <message>
        <source>The program exists already</source>
        <translation>El programa ya existe</translation>
    </message>
    <message>
        <source>Take it over as its new director, with the program code</source>
        <translation>Hacerse cargo como nueva dirección, con el código del programa</translation>
    </message>
    <message>
        <source>Yes, show the program code</source>
        <translation>Sí, mostrar el código del programa</translation>
    </message>
    <message>
        <source>Read the rules back</source>
        <translation>Releer las reglas</translation>
    </message>
</context>
<context>
    <name>ShareDialogs</name>
    <message>
        <source>Save here</source>
        <translation>Guardar aquí</translation>
    </message>
    <message>
        <source>Open this</source>
        <translation>Abrir este</translation>
    </message>
</context>
<context>
    <name>SheetHistory</name>
    <message>
        <source>What happened</source>
        <translation>Lo que pasó</translation>
    </message>
    <message>
        <source>Paper of this sheet</source>
        <translation>Papel de esta hoja</translation>
    </message>
</context>
<context>
    <name>SheetListPage</name>
    <message>
        <source>Case sheets</source>
        <translation>Hojas de caso</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rol</translation>
    </message>
    <message>
        <source>Specialty</source>
        <translation>Especialidad</translation>
    </message>
    <message>
        <source>No sheet fits. Clear the search or choose another filter.</source>
        <translation>Ninguna hoja coincide. Borra la búsqueda o elige otro filtro.</translation>
    </message>
    <message>
        <source>In this sitting</source>
        <translation>En esta tanda</translation>
    </message>
    <message>
        <source>Several sheets for one preceptor</source>
        <translation>Varias hojas para un preceptor</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Tap the sheets</source>
        <translation>Toca las hojas</translation>
    </message>
    <message numerus="yes">
        <source>Give the phone for %n sheet(s)</source>
        <translation>
            <numerusform>Entregar el teléfono por %n hoja</numerusform>
            <numerusform>Entregar el teléfono por %n hojas</numerusform>
        </translation>
    </message>
    <message>
        <source>Search procedure, surgeon, site or room</source>
        <translation>Buscar procedimiento, cirujano, sede o sala</translation>
    </message>
</context>
<context>
    <name>SheetPageView</name>
    <message>
        <source>Case sheet</source>
        <translation>Hoja de caso</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Counts under</source>
        <translation>Cuenta en</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marcas</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>Waiting for %1: change</source>
        <translation>En espera de %1: cambiar</translation>
    </message>
    <message>
        <source>The preceptor has left: note who</source>
        <translation>El preceptor se fue: anotar quién es</translation>
    </message>
    <message>
        <source>Who scrubbed with you and will sign it? Only you see this note.</source>
        <translation>¿Quién instrumentó contigo y la firmará? Solo tú ves esta nota.</translation>
    </message>
    <message>
        <source>Keep this note</source>
        <translation>Esperar su firma</translation>
    </message>
    <message>
        <source>It was not canceled</source>
        <translation>No se canceló</translation>
    </message>
    <message>
        <source>Canceled before incision</source>
        <translation>Cancelado antes de la incisión</translation>
    </message>
    <message>
        <source>Why? The sheet stays visible with your reason and does not count. Once it is initialed, your instructor decides.</source>
        <translation>¿Por qué? La hoja sigue visible con tu motivo y no cuenta. Si ya tiene iniciales, decide tu docente.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Lo que pasó</translation>
    </message>
    <message>
        <source>Give the phone to your preceptor</source>
        <translation>Entregar el teléfono a tu preceptor</translation>
    </message>
    <message>
        <source>Give the phone to a second preceptor</source>
        <translation>Entregar el teléfono a un segundo preceptor</translation>
    </message>
    <message>
        <source>Withdraw this sheet</source>
        <translation>Retirar esta hoja</translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation>Retirarla</translation>
    </message>
</context>
<context>
    <name>SheetRow</name>
    <message>
        <source>waiting for %1</source>
        <translation>en espera de %1</translation>
    </message>
    <message>
        <source>initialed by %1</source>
        <translation>con iniciales de %1</translation>
    </message>
    <message>
        <source>marked by %1</source>
        <translation>marcada por %1</translation>
    </message>
    <message>
        <source>Your instructor asks: %1</source>
        <translation>Tu docente pregunta: %1</translation>
    </message>
    <message>
        <source>You changed it after it was signed: the signed version counts.</source>
        <translation>La cambiaste después de la firma: cuenta la versión firmada.</translation>
    </message>
    <message>
        <source>Drawn signature: it counts once your instructor has confirmed it.</source>
        <translation>Firma dibujada: cuenta cuando tu docente la haya confirmado.</translation>
    </message>
    <message>
        <source>Not every skill is marked: ask a preceptor who saw the others.</source>
        <translation>Una habilidad está sin marcar: pide la marca a un preceptor que la haya visto.</translation>
    </message>
    <message>
        <source>Ready for the preceptor</source>
        <translation>Lista para el preceptor</translation>
    </message>
    <message>
        <source>signed, not vouched for yet</source>
        <translation>firmada, aún sin aval</translation>
    </message>
    <message>
        <source>Signed with a signing card that your program does not know yet: it counts once an instructor vouches for it.</source>
        <translation>Firmada con una tarjeta que tu programa aún no conoce: cuenta cuando un docente la avale.</translation>
    </message>
    <message>
        <source>Signed with a phone that your program does not know yet: it counts once an instructor vouches for it.</source>
        <translation>Firmada con un teléfono que tu programa aún no conoce: cuenta cuando un docente lo avale.</translation>
    </message>
    <message>
        <source>From %1. It counts once an instructor has initialed it.</source>
        <translation>De: %1. Cuenta cuando un docente haya puesto sus iniciales en ella.</translation>
    </message>
</context>
<context>
    <name>ShowCodesPage</name>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Show the codes</source>
        <translation>Mostrar los códigos</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>A code of the parcel, for the other device&apos;s camera</source>
        <translation>Un código del paquete, para la cámara del otro dispositivo</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · paused</source>
        <translation>%1 · en pausa</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Más lento</translation>
    </message>
    <message>
        <source>Faster</source>
        <translation>Más rápido</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>The picture changes quickly. If that bothers you, choose slower, or pause and go on code by code. The codes are sealed like the file: who films them cannot open them.</source>
        <translation>La imagen cambia rápido. Si molesta, se puede ir más lento, o hacer una pausa y pasar código por código. Los códigos van sellados como el archivo: quien los filme no puede abrirlos.</translation>
    </message>
</context>
<context>
    <name>SignedListPage</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Signed on this phone</source>
        <translation>Firmado en este teléfono</translation>
    </message>
    <message>
        <source>Nothing yet. What you sign is listed here.</source>
        <translation>Todavía nada. Aquí aparece lo que firme.</translation>
    </message>
    <message>
        <source>Your instructor can show you the same list. Tell them when it has a sheet that is not here. Tap a sheet to show its code again.</source>
        <translation>Un docente puede mostrarle la misma lista. Avísele si en ella hay una hoja que no está aquí. Toque una hoja para mostrar otra vez su código.</translation>
    </message>
</context>
<context>
    <name>SignersPage</name>
    <message>
        <source>Who may sign</source>
        <translation>Quién puede firmar</translation>
    </message>
    <message>
        <source>Another credential</source>
        <translation>Otra credencial</translation>
    </message>
    <message>
        <source>Change a credential</source>
        <translation>Cambiar una credencial</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>The list is empty: anybody for whom the program vouches may sign every role.</source>
        <translation>La lista está vacía: puede firmar cada función cualquiera a quien el programa avale.</translation>
    </message>
    <message>
        <source>A signature that is not on the list is never refused: instructors see a question at the sheet.</source>
        <translation>Nunca se rechaza una firma que no está en la lista: los docentes ven una pregunta en la hoja.</translation>
    </message>
    <message>
        <source>Only the director changes this list.</source>
        <translation>Solo la dirección cambia esta lista.</translation>
    </message>
    <message>
        <source>Credential, such as CST or RN</source>
        <translation>Credencial, por ejemplo CST o RN</translation>
    </message>
    <message>
        <source>Roles that it may sign</source>
        <translation>Funciones que puede firmar</translation>
    </message>
    <message>
        <source>Observation</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Second scrub</source>
        <translation>Segunda instrumentación</translation>
    </message>
    <message>
        <source>First scrub</source>
        <translation>Primera instrumentación</translation>
    </message>
    <message>
        <source>Add a credential</source>
        <translation>Añadir una credencial</translation>
    </message>
    <message>
        <source>Sign: add it</source>
        <translation>Firmar: añadirla</translation>
    </message>
    <message>
        <source>Sign: change it</source>
        <translation>Firmar: cambiarla</translation>
    </message>
    <message>
        <source>Sign: take it off the list</source>
        <translation>Firmar: quitarla de la lista</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
</context>
<context>
    <name>SigningHomePage</name>
    <message>
        <source>This phone signs</source>
        <translation>Este teléfono firma</translation>
    </message>
    <message>
        <source>Scan the code on a student&apos;s phone, mark what you saw, sign here, and show the answer to that phone. Neither needs a network.</source>
        <translation>Escanee el código del teléfono de un estudiante, marque lo que vio, firme aquí y muestre la respuesta a ese teléfono. Ninguno necesita red.</translation>
    </message>
    <message>
        <source>Signed on this phone</source>
        <translation>Firmado en este teléfono</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Todavía nada</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n hoja</numerusform>
            <numerusform>%n hojas</numerusform>
        </translation>
    </message>
    <message>
        <source>Your signing key</source>
        <translation>Su clave de firma</translation>
    </message>
    <message>
        <source>For an instructor to vouch for</source>
        <translation>Para que un docente la avale</translation>
    </message>
    <message>
        <source>Your name and credential</source>
        <translation>Su nombre y credencial</translation>
    </message>
    <message>
        <source>This phone</source>
        <translation>Este teléfono</translation>
    </message>
    <message>
        <source>PIN or passphrase, vault code, when it locks, how it looks</source>
        <translation>PIN o frase de contraseña, código de la bóveda, cuándo se bloquea, apariencia</translation>
    </message>
    <message>
        <source>Use the phone after degowning and hand washing, never at the field. Counts, sterile technique and what a student may do follow your facility&apos;s policy.</source>
        <translation>Use el teléfono después de quitarse la bata y lavarse las manos, nunca junto al campo estéril. Los conteos, la técnica estéril y lo que puede hacer un estudiante siguen las normas de su centro.</translation>
    </message>
    <message>
        <source>Scan a student&apos;s code</source>
        <translation>Escanear el código de un estudiante</translation>
    </message>
    <message>
        <source>Lock now</source>
        <translation>Bloquear ahora</translation>
    </message>
</context>
<context>
    <name>SigningKeyPage</name>
    <message>
        <source>Your signing key</source>
        <translation>Su clave de firma</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Show it to an instructor of the program, in person. What you sign counts once they vouch for this key. It is no secret.</source>
        <translation>Muéstrela en persona a un docente del programa. Lo que firma cuenta cuando un docente avala esta clave. No es un secreto.</translation>
    </message>
    <message>
        <source>Code of your signing key</source>
        <translation>Código de su clave de firma</translation>
    </message>
    <message>
        <source>Save it as a text file</source>
        <translation>Guardarla como archivo de texto</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
</context>
<context>
    <name>SigningPage</name>
    <message numerus="yes">
        <source>One signature for %n sheet(s)</source>
        <translation>
            <numerusform>Una firma para %n hoja</numerusform>
            <numerusform>Una firma para %n hojas</numerusform>
        </translation>
    </message>
    <message>
        <source>Your PIN</source>
        <translation>Su PIN</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Firmar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>This is your new signing card. Photograph it with your own phone now: it is shown only here. Whoever has the picture and your PIN can sign as you.</source>
        <translation>Esta es su nueva tarjeta de firma. Fotografíela ahora con su propio teléfono: solo se muestra aquí. Quien tenga la foto y su PIN puede firmar como si fuera usted.</translation>
    </message>
    <message>
        <source>Code of the new signing card</source>
        <translation>Código de la nueva tarjeta de firma</translation>
    </message>
    <message>
        <source>Choose a PIN, 6 to 12 digits</source>
        <translation>Elija un PIN, de 6 a 12 dígitos</translation>
    </message>
    <message>
        <source>PIN of the card</source>
        <translation>PIN de la tarjeta</translation>
    </message>
    <message>
        <source>The PIN again</source>
        <translation>El PIN otra vez</translation>
    </message>
    <message>
        <source>The two PINs differ.</source>
        <translation>Los dos PIN no coinciden.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Your credential, such as CST or RN</source>
        <translation>Su credencial, como CST o RN</translation>
    </message>
    <message>
        <source>Signing</source>
        <translation>Firmando</translation>
    </message>
    <message numerus="yes">
        <source>Sign %n sheet(s)</source>
        <translation>
            <numerusform>Firmar %n hoja</numerusform>
            <numerusform>Firmar %n hojas</numerusform>
        </translation>
    </message>
    <message>
        <source>A card that this phone&apos;s list does not have</source>
        <translation>Una tarjeta que no está en la lista de este teléfono</translation>
    </message>
</context>
<context>
    <name>SigningStartPage</name>
    <message>
        <source>For preceptors</source>
        <translation>Para preceptores</translation>
    </message>
    <message>
        <source>Sign on this phone</source>
        <translation>Firmar en este teléfono</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>This phone gets a signing key of its own. Then you scan the code on a student&apos;s phone, mark the sheet here and sign it. It keeps what you signed and nothing else.</source>
        <translation>Este teléfono recibe su propia clave de firma. Después usted escanea el código del teléfono de un estudiante, marca la hoja aquí y la firma. Guarda lo que firmó y nada más.</translation>
    </message>
    <message>
        <source>Your name, as it stands under what you sign</source>
        <translation>Su nombre, como aparece bajo lo que firma</translation>
    </message>
    <message>
        <source>Your credential, such as CST or RN</source>
        <translation>Su credencial, como CST o RN</translation>
    </message>
    <message>
        <source>Making your key</source>
        <translation>Creando su clave</translation>
    </message>
    <message>
        <source>Make my signing key</source>
        <translation>Crear mi clave de firma</translation>
    </message>
</context>
<context>
    <name>SigningStartedPage</name>
    <message>
        <source>Your signing key is made</source>
        <translation>Su clave de firma está creada</translation>
    </message>
    <message>
        <source>Write down your vault code</source>
        <translation>Anote el código de la bóveda</translation>
    </message>
    <message>
        <source>Next you see your signing key: show it to an instructor, who vouches for it.</source>
        <translation>A continuación verá su clave de firma: muéstrela a un docente, que la avala.</translation>
    </message>
    <message>
        <source>The code is on paper, go on</source>
        <translation>El código está en papel, seguir</translation>
    </message>
</context>
<context>
    <name>SitesPage</name>
    <message>
        <source>Sites</source>
        <translation>Sedes</translation>
    </message>
    <message>
        <source>Another site</source>
        <translation>Otra sede</translation>
    </message>
    <message>
        <source>Change a site</source>
        <translation>Cambiar una sede</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Where at a site phones may be used is the site&apos;s own rule. Students see it on their clinical days.</source>
        <translation>Dónde se pueden usar teléfonos es regla de cada sede. Los estudiantes la ven en sus días clínicos.</translation>
    </message>
    <message>
        <source>No site is listed yet.</source>
        <translation>Todavía no hay sedes en la lista.</translation>
    </message>
    <message>
        <source>The director, instructors and coordinators change this list.</source>
        <translation>La dirección, los docentes y los coordinadores cambian esta lista.</translation>
    </message>
    <message>
        <source>Name, as it stands on case sheets</source>
        <translation>Nombre, como está en las hojas de caso</translation>
    </message>
    <message>
        <source>Phones</source>
        <translation>Teléfonos</translation>
    </message>
    <message>
        <source>What else students should know; may stay empty</source>
        <translation>Qué más deben saber los estudiantes; puede quedar vacío</translation>
    </message>
    <message>
        <source>Add a site</source>
        <translation>Añadir una sede</translation>
    </message>
    <message>
        <source>Sign: add it</source>
        <translation>Firmar: añadirla</translation>
    </message>
    <message>
        <source>Sign: change it</source>
        <translation>Firmar: cambiarla</translation>
    </message>
    <message>
        <source>Sign: take it off the list</source>
        <translation>Firmar: quitarla de la lista</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <translation>Dejarlo como está</translation>
    </message>
</context>
<context>
    <name>SplitCard</name>
    <message>
        <source>One version: %1</source>
        <translation>Una versión: %1</translation>
    </message>
    <message>
        <source>The other: %1</source>
        <translation>La otra: %1</translation>
    </message>
    <message>
        <source>Both are kept. What came after the split is not counted until somebody admits it, one by one, under Me, &quot;What does not count yet&quot;.</source>
        <translation>Se guardan las dos. Lo que vino después de la división no cuenta hasta que alguien lo admita, uno por uno, en Yo, «Lo que todavía no cuenta».</translation>
    </message>
</context>
<context>
    <name>SplitWords</name>
    <message>
        <source>Not in the files that came in.</source>
        <translation>No está en los archivos recibidos.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) in this version.</source>
        <translation>
            <numerusform>%n elemento en esta versión.</numerusform>
            <numerusform>%n elementos en esta versión.</numerusform>
        </translation>
    </message>
    <message>
        <source>somebody unknown</source>
        <translation>alguien desconocido</translation>
    </message>
    <message>
        <source>a case sheet opened</source>
        <translation>una hoja abierta</translation>
    </message>
    <message>
        <source>a case sheet changed</source>
        <translation>una hoja cambiada</translation>
    </message>
    <message>
        <source>a preceptor&apos;s signature</source>
        <translation>la firma de un preceptor</translation>
    </message>
    <message>
        <source>a case sheet taken back</source>
        <translation>una hoja retirada</translation>
    </message>
    <message>
        <source>a case filed under a specialty</source>
        <translation>un caso archivado en una especialidad</translation>
    </message>
    <message>
        <source>a mark review asked for</source>
        <translation>una revisión de marca pedida</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>The record of %1 split at item %2, often after a restore.</source>
        <translation>El registro de %1 se dividió en el elemento %2, a menudo tras una restauración.</translation>
    </message>
</context>
<context>
    <name>StaffHome</name>
    <message>
        <source>Check</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Recibir</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Yo</translation>
    </message>
    <message>
        <source>They have it</source>
        <translation>Ya lo tienen</translation>
    </message>
</context>
<context>
    <name>StaffMePage</name>
    <message>
        <source>Rules in force</source>
        <translation>Reglas en vigor</translation>
    </message>
    <message>
        <source>What is required, who may sign</source>
        <translation>Qué se exige, quién puede firmar</translation>
    </message>
    <message>
        <source>This device</source>
        <translation>Este equipo</translation>
    </message>
    <message>
        <source>PIN or passphrase, vault code, when it locks</source>
        <translation>PIN o frase de contraseña, código de la bóveda, cuándo se bloquea</translation>
    </message>
    <message>
        <source>Leave the demo</source>
        <translation>Salir de la demo</translation>
    </message>
    <message>
        <source>Lock now</source>
        <translation>Bloquear ahora</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Students and staff, invitations, devices</source>
        <translation>Estudiantes y personal, invitaciones, equipos</translation>
    </message>
    <message>
        <source>Preceptors and cards</source>
        <translation>Preceptores y tarjetas</translation>
    </message>
    <message>
        <source>Who may sign, new cards, vouching, lost ones</source>
        <translation>Quién puede firmar, tarjetas nuevas, avales, pérdidas</translation>
    </message>
    <message>
        <source>To print and cut</source>
        <translation>Para imprimir y recortar</translation>
    </message>
    <message>
        <source>Invitations and pocket stubs</source>
        <translation>Invitaciones y talones de bolsillo</translation>
    </message>
    <message>
        <source>Hand the program over</source>
        <translation>Entregar el programa</translation>
    </message>
    <message>
        <source>To a new director</source>
        <translation>A una nueva dirección</translation>
    </message>
</context>
<context>
    <name>StaffParcelsPage</name>
    <message>
        <source>Take in, send</source>
        <translation>Recibir y enviar</translation>
    </message>
    <message>
        <source>Stop after this file</source>
        <translation>Parar después de este archivo</translation>
    </message>
    <message>
        <source>Students send you parcels. Take in the files, or the whole folder in which they are; on a desk you can also drop them here. Taking in the same file twice does no harm.</source>
        <translation>Los estudiantes envían paquetes. Reciba los archivos, o toda la carpeta donde están; en un escritorio también se pueden soltar aquí. Recibir dos veces el mismo archivo no hace daño.</translation>
    </message>
    <message>
        <source>Back to the students</source>
        <translation>De vuelta a los estudiantes</translation>
    </message>
    <message>
        <source>Receipts and what you decided. A parcel is sealed: only that student&apos;s phone can open it.</source>
        <translation>Acuses y decisiones. Un paquete va sellado: solo el teléfono de ese estudiante puede abrirlo.</translation>
    </message>
    <message>
        <source>Everybody has what you decided.</source>
        <translation>Todos tienen lo decidido.</translation>
    </message>
    <message>
        <source>Save the parcels of all %1</source>
        <translation>Guardar los paquetes de los %1</translation>
    </message>
    <message>
        <source>Parcel for %1</source>
        <translation>Paquete para %1</translation>
    </message>
    <message>
        <source>Parcel for the other instructors and the director</source>
        <translation>Paquete para los demás docentes y la dirección</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Take in files</source>
        <translation>Recibir archivos</translation>
    </message>
    <message>
        <source>Take in a whole folder</source>
        <translation>Recibir toda una carpeta</translation>
    </message>
    <message>
        <source>Take in what the demo&apos;s students sent today</source>
        <translation>Recibir lo que enviaron hoy los estudiantes de la demo</translation>
    </message>
    <message>
        <source>Read codes with the camera</source>
        <translation>Leer códigos con la cámara</translation>
    </message>
    <message>
        <source>from a student&apos;s screen, without a file or a network</source>
        <translation>de la pantalla de un estudiante, sin archivo ni red</translation>
    </message>
    <message>
        <source>Show parcels as codes</source>
        <translation>Mostrar los paquetes como códigos</translation>
    </message>
    <message>
        <source>on this screen, for the other device&apos;s camera, instead of saving a file</source>
        <translation>en esta pantalla, para la cámara del otro dispositivo, en vez de guardar un archivo</translation>
    </message>
</context>
<context>
    <name>StudentHome</name>
    <message>
        <source>For your instructor&apos;s camera</source>
        <translation>Para la cámara de tu docente</translation>
    </message>
</context>
<context>
    <name>StudentOfClassPage</name>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Skills, month by month</source>
        <translation>Habilidades, mes a mes</translation>
    </message>
    <message>
        <source>Feedback</source>
        <translation>Comentarios</translation>
    </message>
    <message>
        <source>Case sheets</source>
        <translation>Hojas de caso</translation>
    </message>
    <message>
        <source>Show more of %1</source>
        <translation>Mostrar más de %1</translation>
    </message>
    <message>
        <source>Nothing of this student has come in yet.</source>
        <translation>Todavía no ha llegado nada de este estudiante.</translation>
    </message>
    <message>
        <source>Completion</source>
        <translation>Cumplimiento</translation>
    </message>
    <message>
        <source>Whether the requirements are met, and the record of it</source>
        <translation>Si se cumplen los requisitos, y su constancia</translation>
    </message>
    <message>
        <source>Papers of this student</source>
        <translation>Papeles de este estudiante</translation>
    </message>
    <message>
        <source>Case log, rows for a spreadsheet</source>
        <translation>Registro de casos, filas para una hoja de cálculo</translation>
    </message>
</context>
<context>
    <name>TabBarOfPages</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Tally</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Me</source>
        <translation>Yo</translation>
    </message>
</context>
<context>
    <name>TakeOverPage</name>
    <message>
        <source>For a new director</source>
        <translation>Para una nueva dirección</translation>
    </message>
    <message>
        <source>Take over a program</source>
        <translation>Hacerse cargo de un programa</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>You need the program code from its paper, and a file with the record from the director before you or an instructor: you take it in afterwards.</source>
        <translation>Necesita el código del programa, de su papel, y un archivo con el registro, de la dirección anterior o de un docente: lo recibe después.</translation>
    </message>
    <message>
        <source>Program code</source>
        <translation>Código del programa</translation>
    </message>
    <message>
        <source>Which director of the program are you? The second is 2</source>
        <translation>¿Qué dirección del programa es usted? La segunda es 2</translation>
    </message>
    <message>
        <source>Your name, as it stands under what you decide</source>
        <translation>Su nombre, como figura bajo lo que decide</translation>
    </message>
    <message>
        <source>The device of the director before you keeps its rights until it is ended.</source>
        <translation>El equipo de la dirección anterior conserva sus derechos hasta que se le ponga fin.</translation>
    </message>
    <message>
        <source>Making your record</source>
        <translation>Creando su registro</translation>
    </message>
    <message>
        <source>Take over the program</source>
        <translation>Hacerse cargo del programa</translation>
    </message>
</context>
<context>
    <name>TallyPage</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>First scrub in %1: the next one counts.</source>
        <translation>Primera instrumentación en %1: la próxima cuenta.</translation>
    </message>
    <message>
        <source>Second scrub in %1: the next one counts.</source>
        <translation>Segunda instrumentación en %1: la próxima cuenta.</translation>
    </message>
    <message>
        <source>First scrub in %1: it takes %2 of one specialty.</source>
        <translation>Primera instrumentación en %1: hacen falta %2 de una misma especialidad.</translation>
    </message>
    <message>
        <source>Second scrub in %1: it takes %2 of one specialty.</source>
        <translation>Segunda instrumentación en %1: hacen falta %2 de una misma especialidad.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Under %1, in force now: %2 of %3.</source>
        <translation>Con %1, en vigor ahora: %2 de %3.</translation>
    </message>
    <message>
        <source>Under %1, from %2 on: %3 of %4.</source>
        <translation>Con %1, desde %2: %3 de %4.</translation>
    </message>
    <message>
        <source>Under %1, before %2: %3 of %4.</source>
        <translation>Con %1, antes de %2: %3 de %4.</translation>
    </message>
    <message>
        <source>%1, from %2 on, is not at hand here.</source>
        <translation>%1, desde %2, no está aquí.</translation>
    </message>
    <message>
        <source>%1, before %2, is not at hand here.</source>
        <translation>%1, antes de %2, no está aquí.</translation>
    </message>
</context>
<context>
    <name>TallyPageView</name>
    <message>
        <source>Tally</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Ask for next</source>
        <translation>Qué pedir ahora</translation>
    </message>
    <message>
        <source>Hide what does not count</source>
        <translation>Ocultar lo que no cuenta</translation>
    </message>
    <message>
        <source>Why cases do not count</source>
        <translation>Por qué hay casos que no cuentan</translation>
    </message>
    <message>
        <source>%1. The program&apos;s director decides which requirements are in force and who has met them.</source>
        <translation>%1. La dirección del programa decide qué requisitos están en vigor y quién los ha cumplido.</translation>
    </message>
</context>
<context>
    <name>ThreeWay</name>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>N/A</source>
        <translation>N/A</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Nothing is waiting for a signature or an answer. After your next case, tap New case sheet.</source>
        <translation>Nada espera una firma ni una respuesta. Después de tu próximo caso, toca Hoja de caso nueva.</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>Lo último</translation>
    </message>
    <message>
        <source>Send to my instructor</source>
        <translation>Enviar a mi docente</translation>
    </message>
    <message>
        <source>Go on with your case sheet</source>
        <translation>Seguir con tu hoja de caso</translation>
    </message>
    <message>
        <source>New case sheet</source>
        <translation>Hoja de caso nueva</translation>
    </message>
    <message>
        <source>All of them are among your sheets.</source>
        <translation>Todas están entre tus hojas.</translation>
    </message>
</context>
<context>
    <name>UndoBar</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
</context>
<context>
    <name>VaultMadePage</name>
    <message>
        <source>Write down your vault code</source>
        <translation>Anote el código de la bóveda</translation>
    </message>
    <message>
        <source>The program&apos;s id, which anybody may know</source>
        <translation>El identificador del programa, que cualquiera puede conocer</translation>
    </message>
    <message>
        <source>The code is on paper, go on</source>
        <translation>El código está en papel, seguir</translation>
    </message>
</context>
<context>
    <name>VouchPage</name>
    <message>
        <source>Do you vouch for it?</source>
        <translation>¿Lo avala?</translation>
    </message>
    <message>
        <source>A preceptor&apos;s own phone</source>
        <translation>El teléfono de un preceptor</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>In person: on the preceptor&apos;s phone, under Your signing key, there is a code. It is no secret.</source>
        <translation>En persona: en el teléfono del preceptor, en «Su clave de firma», hay un código. No es un secreto.</translation>
    </message>
    <message>
        <source>Open its file, or a picture of the code</source>
        <translation>Abrir su archivo o una imagen del código</translation>
    </message>
    <message>
        <source>Or the 64 digits</source>
        <translation>O los 64 dígitos</translation>
    </message>
    <message>
        <source>Vouch only for somebody whom you know, and who says to you that it is theirs. What it signed and signs counts then.</source>
        <translation>Avale solo a quien conoce y le dice que es suyo. Entonces cuenta lo que firmó y lo que firme.</translation>
    </message>
    <message>
        <source>Their phone shows the same digits:</source>
        <translation>Su teléfono muestra los mismos dígitos:</translation>
    </message>
    <message>
        <source>Signed with it and waiting</source>
        <translation>Firmado con esto y en espera</translation>
    </message>
    <message>
        <source>Name of the preceptor</source>
        <translation>Nombre del preceptor</translation>
    </message>
    <message>
        <source>A preceptor of this name is known: it is added to their cards and phones.</source>
        <translation>Ya se conoce a un preceptor con este nombre: se añade a sus tarjetas y teléfonos.</translation>
    </message>
    <message>
        <source>Credential, such as CST or RN</source>
        <translation>Credencial, por ejemplo CST o RN</translation>
    </message>
    <message>
        <source>Site where they work</source>
        <translation>Sede donde trabaja</translation>
    </message>
    <message>
        <source>I vouch for it</source>
        <translation>Lo avalo</translation>
    </message>
</context>
<context>
    <name>WaitingCard</name>
    <message>
        <source>looked at</source>
        <translation>vista</translation>
    </message>
</context>
<context>
    <name>WaitingListPage</name>
    <message>
        <source>Check</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Student, procedure, surgeon, site, room or preceptor</source>
        <translation>Estudiante, procedimiento, cirujano, sede, sala o preceptor</translation>
    </message>
    <message>
        <source>Which ones</source>
        <translation>Cuáles</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Look over the preceptors&apos; signatures</source>
        <translation>Repasar las firmas de los preceptores</translation>
    </message>
    <message>
        <source>Nothing to look at here. New parcels come in under &quot;Take in, send&quot;.</source>
        <translation>Aquí no hay nada que ver. Los paquetes nuevos entran en «Recibir y enviar».</translation>
    </message>
    <message numerus="yes">
        <source>Initial the %n plain sheet(s) that you looked at</source>
        <translation>
            <numerusform>Poner iniciales a la hoja sin novedad que se vio</numerusform>
            <numerusform>Poner iniciales a las %n hojas sin novedad que se vieron</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WelcomePage</name>
    <message>
        <source>Your case sheets, sealed</source>
        <translation>Tus hojas de caso, selladas</translation>
    </message>
    <message>
        <source>After the case</source>
        <translation>Después del caso</translation>
    </message>
    <message>
        <source>You open a case sheet, without a network, in half a minute.</source>
        <translation>Abres una hoja de caso, sin red, en medio minuto.</translation>
    </message>
    <message>
        <source>Your preceptor signs</source>
        <translation>Tu preceptor firma</translation>
    </message>
    <message>
        <source>On your phone, with their own card: ten skills, one minute. Nobody can change it afterwards without it showing.</source>
        <translation>En tu teléfono, con su propia tarjeta: diez habilidades, un minuto. Después nadie puede cambiarlo sin que se note.</translation>
    </message>
    <message>
        <source>Your instructor initials</source>
        <translation>Tu docente pone sus iniciales</translation>
    </message>
    <message>
        <source>And you always know what counts and what to ask for next.</source>
        <translation>Y siempre sabes qué cuenta y qué pedir después.</translation>
    </message>
    <message>
        <source>Join a program</source>
        <translation>Unirme a un programa</translation>
    </message>
    <message>
        <source>Making the demo</source>
        <translation>Preparando la demo</translation>
    </message>
    <message>
        <source>I am a preceptor: sign on this phone</source>
        <translation>Soy preceptor: firmar en este teléfono</translation>
    </message>
    <message>
        <source>Try it as a student</source>
        <translation>Probar como estudiante</translation>
    </message>
    <message>
        <source>Try it as an instructor</source>
        <translation>Probar como docente</translation>
    </message>
    <message>
        <source>Set up a program</source>
        <translation>Crear un programa</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Checked supplies and equipment</source>
        <translation>Verificar insumos y equipo</translation>
    </message>
    <message>
        <source>Set up the sterile field</source>
        <translation>Preparar el campo estéril</translation>
    </message>
    <message>
        <source>Counts, initial and closing</source>
        <translation>Hacer los conteos al inicio y al cierre</translation>
    </message>
    <message>
        <source>Passed instruments</source>
        <translation>Pasar el instrumental</translation>
    </message>
    <message>
        <source>Kept sterile technique</source>
        <translation>Mantener la técnica estéril</translation>
    </message>
    <message>
        <source>Sponged the wound</source>
        <translation>Secar la herida con gasas</translation>
    </message>
    <message>
        <source>Suctioned</source>
        <translation>Aspirar</translation>
    </message>
    <message>
        <source>Cut suture</source>
        <translation>Cortar sutura</translation>
    </message>
    <message>
        <source>Held retractors</source>
        <translation>Sostener los separadores</translation>
    </message>
    <message>
        <source>Handled the camera</source>
        <translation>Manejar la cámara</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>sin marcar</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>N/A</source>
        <translation>N/A</translation>
    </message>
    <message>
        <source>First scrub</source>
        <translation>Primera instrumentación</translation>
    </message>
    <message>
        <source>Second scrub</source>
        <translation>Segunda instrumentación</translation>
    </message>
    <message>
        <source>Observation</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Not fully marked</source>
        <translation>Marcas incompletas</translation>
    </message>
    <message>
        <source>Canceled</source>
        <translation>Cancelado</translation>
    </message>
    <message>
        <source>General</source>
        <translation>General</translation>
    </message>
    <message>
        <source>Cardiothoracic</source>
        <translation>Cardiotorácica</translation>
    </message>
    <message>
        <source>Ear, nose and throat</source>
        <translation>Otorrinolaringología</translation>
    </message>
    <message>
        <source>Eye</source>
        <translation>Oftalmología</translation>
    </message>
    <message>
        <source>Genitourinary</source>
        <translation>Genitourinaria</translation>
    </message>
    <message>
        <source>Neurosurgery</source>
        <translation>Neurocirugía</translation>
    </message>
    <message>
        <source>Obstetrics and gynecology</source>
        <translation>Ginecología y obstetricia</translation>
    </message>
    <message>
        <source>Oral and maxillofacial</source>
        <translation>Oral y maxilofacial</translation>
    </message>
    <message>
        <source>Orthopedics</source>
        <translation>Ortopedia</translation>
    </message>
    <message>
        <source>Peripheral vascular</source>
        <translation>Vascular periférica</translation>
    </message>
    <message>
        <source>Plastic and reconstructive</source>
        <translation>Plástica y reconstructiva</translation>
    </message>
    <message>
        <source>Procurement and transplant</source>
        <translation>Obtención y trasplante</translation>
    </message>
    <message>
        <source>Diagnostic endoscopy</source>
        <translation>Endoscopia diagnóstica</translation>
    </message>
    <message>
        <source>not signed yet</source>
        <translation>aún sin firmar</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>returned with a question</source>
        <translation>devuelta con una pregunta</translation>
    </message>
    <message>
        <source>initialed</source>
        <translation>con iniciales</translation>
    </message>
    <message>
        <source>changed by your instructor</source>
        <translation>cambiada por tu docente</translation>
    </message>
    <message>
        <source>void</source>
        <translation>anulada</translation>
    </message>
    <message>
        <source>on the preceptor&apos;s own phone</source>
        <translation>teléfono propio del preceptor</translation>
    </message>
    <message>
        <source>signing card and PIN</source>
        <translation>tarjeta de firma con PIN</translation>
    </message>
    <message>
        <source>new signing card, not vouched for yet</source>
        <translation>tarjeta de firma nueva (aún sin aval)</translation>
    </message>
    <message>
        <source>drawn on this phone, the weakest way</source>
        <translation>firma dibujada en este teléfono (la forma menos segura)</translation>
    </message>
    <message>
        <source>pen-signed stub</source>
        <translation>talón firmado con bolígrafo</translation>
    </message>
    <message>
        <source>first scrub</source>
        <translation>primera instrumentación</translation>
    </message>
    <message>
        <source>first or second scrub</source>
        <translation>primera o segunda instrumentación</translation>
    </message>
    <message>
        <source>second scrub</source>
        <translation>segunda instrumentación</translation>
    </message>
    <message>
        <source>Specialty</source>
        <translation>Especialidad</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>The case was canceled before incision, so it has no role.</source>
        <translation>El caso se canceló antes de la incisión, así que no tiene rol.</translation>
    </message>
    <message>
        <source>No skill is marked yet, so there is no role yet.</source>
        <translation>Aún no hay ninguna habilidad marcada, así que aún no hay rol.</translation>
    </message>
    <message>
        <source>There is no role until every skill is marked. Missing: %1.</source>
        <translation>No hay rol hasta que estén marcadas todas las habilidades. Falta marcar: %1.</translation>
    </message>
    <message>
        <source>All five first-scrub skills are Yes, so the second-scrub marks do not change the role.</source>
        <translation>Las cinco habilidades de primera instrumentación tienen Sí, así que las marcas de segunda instrumentación no cambian el rol.</translation>
    </message>
    <message>
        <source>Every first-scrub skill is Yes, or N/A: %1.</source>
        <translation>Todas las habilidades de primera instrumentación tienen Sí, o N/A: %1.</translation>
    </message>
    <message>
        <source>Not every first-scrub skill is Yes, and a second-scrub skill is.</source>
        <translation>No todas las habilidades de primera instrumentación tienen Sí, pero alguna de segunda instrumentación lo tiene.</translation>
    </message>
    <message>
        <source>Not first scrub, because these are No: %1. A second-scrub skill is Yes.</source>
        <translation>No es primera instrumentación, porque esto tiene No: %1. Alguna habilidad de segunda instrumentación tiene Sí.</translation>
    </message>
    <message>
        <source>Not every first-scrub skill is Yes and no second-scrub skill is, so it is an observation.</source>
        <translation>No todas las habilidades de primera instrumentación tienen Sí y ninguna de segunda instrumentación lo tiene, así que es una observación.</translation>
    </message>
    <message>
        <source>checking supplies and equipment</source>
        <translation>revisión de insumos y equipo</translation>
    </message>
    <message>
        <source>setting up the sterile field</source>
        <translation>preparación del campo estéril</translation>
    </message>
    <message>
        <source>initial and closing counts</source>
        <translation>conteos inicial y de cierre</translation>
    </message>
    <message>
        <source>passing instruments</source>
        <translation>paso de instrumentos</translation>
    </message>
    <message>
        <source>sterile technique</source>
        <translation>técnica estéril</translation>
    </message>
    <message>
        <source>sponging the wound</source>
        <translation>secado de la herida</translation>
    </message>
    <message>
        <source>suctioning</source>
        <translation>aspiración</translation>
    </message>
    <message>
        <source>cutting suture</source>
        <translation>corte de sutura</translation>
    </message>
    <message>
        <source>holding retractors</source>
        <translation>sujeción de separadores</translation>
    </message>
    <message>
        <source>handling the camera</source>
        <translation>manejo de la cámara</translation>
    </message>
    <message>
        <source>Vaginal delivery</source>
        <translation>Parto vaginal</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>The case was canceled before incision.</source>
        <translation>El caso se canceló antes de la incisión.</translation>
    </message>
    <message>
        <source>Not every skill is marked yet.</source>
        <translation>Todavía no están marcadas todas las habilidades.</translation>
    </message>
    <message>
        <source>It is an observation: recorded, never counted.</source>
        <translation>Es una observación: queda registrada y nunca cuenta.</translation>
    </message>
    <message>
        <source>No instructor has initialed this sheet yet.</source>
        <translation>Ningún docente ha puesto todavía sus iniciales en esta hoja.</translation>
    </message>
    <message>
        <source>No preceptor has signed this sheet yet.</source>
        <translation>Ningún preceptor ha firmado todavía esta hoja.</translation>
    </message>
    <message>
        <source>The signing card was made on the spot and has not been vouched for yet.</source>
        <translation>La tarjeta de firma se hizo en el momento y nadie la avala todavía.</translation>
    </message>
    <message>
        <source>A drawn signature counts only after an instructor has confirmed it.</source>
        <translation>Una firma dibujada cuenta solo después de que un docente la haya confirmado.</translation>
    </message>
    <message>
        <source>A pen-signed stub counts only after an instructor has confirmed it.</source>
        <translation>Un talón firmado con bolígrafo cuenta solo después de que un docente lo haya confirmado.</translation>
    </message>
    <message>
        <source>The program&apos;s rules do not accept this signature.</source>
        <translation>Las reglas del programa no aceptan esta firma.</translation>
    </message>
    <message>
        <source>Two procedures of one operation are one case in a category, and another procedure of this operation counts under %1.</source>
        <translation>Dos procedimientos de una operación son un solo caso en una categoría, y otro procedimiento de esta operación cuenta en %1.</translation>
    </message>
    <message>
        <source>At most %1 cases of %2 count, and they are reached.</source>
        <translation>Cuentan como máximo %1 casos de %2, y ya se alcanzaron.</translation>
    </message>
    <message>
        <source>No target of the requirements takes this category in this role.</source>
        <translation>Ninguna meta de los requisitos admite esta categoría con este rol.</translation>
    </message>
    <message>
        <source>The seats that any specialty may fill are taken; the rest are kept for specialties that are still short.</source>
        <translation>Los lugares para cualquier especialidad están ocupados; los demás se reservan para especialidades a las que aún les faltan casos.</translation>
    </message>
    <message>
        <source>Only so many cases of %1 may count as first scrub, and the second-scrub targets that take it are full.</source>
        <translation>Solo cuenta cierto número de casos de %1 como primera instrumentación, y las metas de segunda instrumentación que los admiten están completas.</translation>
    </message>
    <message>
        <source>The targets that take this case are full.</source>
        <translation>Las metas que admiten este caso están completas.</translation>
    </message>
    <message>
        <source>a record number</source>
        <translation>un número de historia clínica</translation>
    </message>
    <message>
        <source>a date</source>
        <translation>una fecha</translation>
    </message>
    <message>
        <source>an age over 89</source>
        <translation>una edad mayor de 89</translation>
    </message>
    <message>
        <source>a phone number</source>
        <translation>un número de teléfono</translation>
    </message>
    <message>
        <source>an e-mail address</source>
        <translation>una dirección de correo electrónico</translation>
    </message>
    <message>
        <source>a social security number</source>
        <translation>un número de seguro social</translation>
    </message>
    <message>
        <source>a patient&apos;s name</source>
        <translation>el nombre de un paciente</translation>
    </message>
    <message>
        <source>imported, not attested</source>
        <translation>importada, no atestiguada</translation>
    </message>
    <message>
        <source>Imported, not attested: it counts once an instructor has initialed it.</source>
        <translation>Importada, no atestiguada: cuenta cuando un docente haya puesto sus iniciales en ella.</translation>
    </message>
    <message>
        <source>The role was written on a paper log, which carries no marks.</source>
        <translation>El rol se anotó en un registro en papel, que no lleva marcas.</translation>
    </message>
    <message>
        <source>Imported, not attested, by %1. It comes from: %2.</source>
        <translation>Importada, no atestiguada, por %1. Procede de: %2.</translation>
    </message>
    <message>
        <source>Preceptor as written there: %1.</source>
        <translation>Preceptor según está escrito allí: %1.</translation>
    </message>
</context>
<context>
    <name>peelpack::camera::DeviceCamera</name>
    <message>
        <source>There is no camera here: choose a picture of the code, or type it.</source>
        <translation>Aquí no hay cámara: se puede elegir una imagen del código o escribirlo.</translation>
    </message>
    <message>
        <source>The camera does not start: choose a picture of the code, or type it.</source>
        <translation>La cámara no arranca: se puede elegir una imagen del código o escribirlo.</translation>
    </message>
</context>
<context>
    <name>peelpack::evidence_pages::Aside</name>
    <message>
        <source>It came after the record split.</source>
        <translation>Vino después de que el registro se dividiera.</translation>
    </message>
    <message>
        <source>It comes from a device that was ended.</source>
        <translation>Viene de un dispositivo dado de baja.</translation>
    </message>
    <message>
        <source>It was signed with a card or phone that was ended.</source>
        <translation>Se firmó con una tarjeta o un teléfono dados de baja.</translation>
    </message>
    <message>
        <source>Nobody has vouched for the preceptor&apos;s card or phone.</source>
        <translation>Nadie ha respondido por la tarjeta o el teléfono del preceptor.</translation>
    </message>
    <message>
        <source>Nobody has admitted this device to the program.</source>
        <translation>Nadie ha admitido este dispositivo en el programa.</translation>
    </message>
    <message>
        <source>It was made by a newer Peelpack.</source>
        <translation>Lo hizo un Peelpack más nuevo.</translation>
    </message>
    <message>
        <source>one record</source>
        <translation>un registro</translation>
    </message>
    <message>
        <source>There is no such entry here.</source>
        <translation>Aquí no hay tal elemento.</translation>
    </message>
    <message>
        <source>Admitted: it counts from now on.</source>
        <translation>Admitido: cuenta desde ahora.</translation>
    </message>
</context>
<context>
    <name>peelpack::evidence_pages::Completion</name>
    <message>
        <source>%1 of %2 cases count, as initialed.</source>
        <translation>Cuentan %1 de %2 casos, según las iniciales.</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 de %3</translation>
    </message>
    <message>
        <source>Only the director decides who has met the requirements. You are here as an instructor.</source>
        <translation>Solo la dirección decide quién ha cumplido los requisitos. Usted está aquí como docente.</translation>
    </message>
    <message>
        <source>A record of this student was made before: %1. A new one says that it supersedes it.</source>
        <translation>Ya se hizo una constancia de este estudiante: %1. Una nueva dice que la reemplaza.</translation>
    </message>
    <message>
        <source>Superseded by a later decision.</source>
        <translation>Reemplazada por una decisión posterior.</translation>
    </message>
    <message>
        <source>Since then, sheets or rules have changed; it stands as it was decided.</source>
        <translation>Desde entonces cambiaron hojas o reglas; vale como se decidió.</translation>
    </message>
    <message>
        <source>%1 has met the requirements %2.</source>
        <translation>%1 ha cumplido los requisitos %2.</translation>
    </message>
    <message>
        <source>%1 is complete by exception under the requirements %2.</source>
        <translation>%1 queda como cumplido por excepción según los requisitos %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n case(s) are short.</source>
        <translation>
            <numerusform>Falta %n caso.</numerusform>
            <numerusform>Faltan %n casos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Your reason: %1</source>
        <translation>Su motivo: %1</translation>
    </message>
    <message>
        <source>You sign this as the director. It stays in the journal for good, and goes to the student and the instructors with the next parcels.</source>
        <translation>Esto se firma como dirección. Queda para siempre en el diario y llega al estudiante y a los docentes con los próximos paquetes.</translation>
    </message>
    <message>
        <source>This looks like %1. No patient identifiers belong here, and what is written stays.</source>
        <translation>Esto parece %1. Aquí no van datos de pacientes, y lo escrito queda.</translation>
    </message>
    <message>
        <source>Decide first; the record cites the decision.</source>
        <translation>Primero hay que decidir; la constancia cita la decisión.</translation>
    </message>
    <message>
        <source>This is not a file of proofs. It is saved together with the record, and the student keeps it.</source>
        <translation>Este no es un archivo de pruebas. Se guarda junto con la constancia y lo conserva el estudiante.</translation>
    </message>
    <message>
        <source>There is no such sheet in the file.</source>
        <translation>En el archivo no hay tal hoja.</translation>
    </message>
</context>
<context>
    <name>peelpack::evidence_pages::Confirming</name>
    <message>
        <source>All students</source>
        <translation>Todos los estudiantes</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n hoja</numerusform>
            <numerusform>%n hojas</numerusform>
        </translation>
    </message>
    <message>
        <source>The number of an earlier drawing has digits only. Leave it empty to draw new ones.</source>
        <translation>El número de un sorteo anterior solo lleva cifras. Déjelo vacío para sacar otras nuevas.</translation>
    </message>
    <message>
        <source>No signed sheet is left to confirm.</source>
        <translation>No queda ninguna hoja firmada por confirmar.</translation>
    </message>
    <message>
        <source>of %1 that are not confirmed yet. Number of this drawing: %2</source>
        <translation>de %1 que aún no se confirmaron. Número de este sorteo: %2</translation>
    </message>
    <message>
        <source>Decided a moment ago: undo it to change your mind.</source>
        <translation>Decidida hace un momento: deshágalo para cambiar de idea.</translation>
    </message>
    <message>
        <source>says: not mine</source>
        <translation>dice: no es mía</translation>
    </message>
    <message>
        <source>confirmed with the preceptor</source>
        <translation>confirmada con el preceptor</translation>
    </message>
    <message>
        <source>There is no such sheet here.</source>
        <translation>Aquí no hay tal hoja.</translation>
    </message>
    <message>
        <source>Confirmed with the preceptor, and initialed: %1</source>
        <translation>Confirmada con el preceptor y con iniciales: %1</translation>
    </message>
    <message>
        <source>Kept that it is not theirs: %1</source>
        <translation>Guardado que no es suya: %1</translation>
    </message>
</context>
<context>
    <name>peelpack::evidence_pages::Papers</name>
    <message>
        <source>All students</source>
        <translation>Todos los estudiantes</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s). Not de-identified: keep it as an education record.</source>
        <translation>
            <numerusform>%n fila. No está anonimizada: guárdela como expediente educativo.</numerusform>
            <numerusform>%n filas. No están anonimizadas: guárdelas como expediente educativo.</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no such sheet here.</source>
        <translation>Aquí no hay tal hoja.</translation>
    </message>
    <message>
        <source>This is no completion record of this program, or it was changed: %1</source>
        <translation>Esta no es una constancia de este programa, o fue alterada: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s). Keep it as an education record.</source>
        <translation>
            <numerusform>%n página. Guárdela como expediente educativo.</numerusform>
            <numerusform>%n páginas. Guárdelas como expediente educativo.</numerusform>
        </translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Contando</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Stopped; nothing was made.</source>
        <translation>Se paró; no se hizo nada.</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::Amending</name>
    <message>
        <source>Write the date as year-month-day: 2026-03-12.</source>
        <translation>Escriba la fecha como año-mes-día: 2026-03-12.</translation>
    </message>
    <message>
        <source>Which procedure was it?</source>
        <translation>¿Qué procedimiento fue?</translation>
    </message>
    <message>
        <source>%1: &quot;%2&quot; becomes &quot;%3&quot;</source>
        <translation>%1: «%2» pasa a «%3»</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Procedure</source>
        <translation>Procedimiento</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Surgeon</source>
        <translation>Cirujano</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>It becomes canceled before incision</source>
        <translation>Pasa a cancelada antes de la incisión</translation>
    </message>
    <message>
        <source>It is no longer canceled</source>
        <translation>Ya no está cancelada</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rol</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::CheckList</name>
    <message>
        <source>All that wait</source>
        <translation>Todas las que esperan</translation>
    </message>
    <message>
        <source>Something to check</source>
        <translation>Con algo que revisar</translation>
    </message>
    <message>
        <source>Mark reviews</source>
        <translation>Revisiones de marca</translation>
    </message>
    <message>
        <source>Weak signatures</source>
        <translation>Firmas débiles</translation>
    </message>
    <message>
        <source>Nothing stands out</source>
        <translation>Sin novedad</translation>
    </message>
    <message>
        <source>By student</source>
        <translation>Por estudiante</translation>
    </message>
    <message>
        <source>By day and room</source>
        <translation>Por día y sala</translation>
    </message>
    <message>
        <source>All classes</source>
        <translation>Todas las clases</translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation>
            <numerusform>Y %n más.</numerusform>
            <numerusform>Y %n más.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Reading: %1 of %n student(s)</source>
        <translation>
            <numerusform>Leyendo: %1 de %n estudiante</numerusform>
            <numerusform>Leyendo: %1 de %n estudiantes</numerusform>
        </translation>
    </message>
    <message>
        <source>No sheet waits</source>
        <translation>Ninguna hoja espera</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) wait</source>
        <translation>
            <numerusform>%n hoja espera</numerusform>
            <numerusform>%n hojas esperan</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing stands out about the preceptors&apos; signatures.</source>
        <translation>Nada llama la atención en las firmas de los preceptores.</translation>
    </message>
    <message>
        <source>Sheet %1 of %2</source>
        <translation>Hoja %1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) initialed</source>
        <translation>
            <numerusform>%n hoja con iniciales</numerusform>
            <numerusform>%n hojas con iniciales</numerusform>
        </translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>De: %1</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::CheckedSheet</name>
    <message>
        <source>The student&apos;s reason: %1</source>
        <translation>El motivo del estudiante: %1</translation>
    </message>
    <message>
        <source>says: not mine</source>
        <translation>dice: no es mía</translation>
    </message>
    <message>
        <source>confirmed with the preceptor</source>
        <translation>confirmada con el preceptor</translation>
    </message>
    <message>
        <source>after it was initialed: without effect</source>
        <translation>después de las iniciales: sin efecto</translation>
    </message>
    <message>
        <source>As it was signed and logged: %1; %2; %3; %4.</source>
        <translation>Como se firmó y se registró: %1; %2; %3; %4.</translation>
    </message>
    <message>
        <source>not marked by the preceptor</source>
        <translation>sin marca del preceptor</translation>
    </message>
    <message>
        <source>Procedure</source>
        <translation>Procedimiento</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Surgeon</source>
        <translation>Cirujano</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Sede</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Filed under (%1)</source>
        <translation>Archivado en (%1)</translation>
    </message>
    <message>
        <source>Filed under</source>
        <translation>Archivado en</translation>
    </message>
    <message>
        <source>catalog: %1</source>
        <translation>catálogo: %1</translation>
    </message>
    <message>
        <source>not in the catalog</source>
        <translation>no está en el catálogo</translation>
    </message>
    <message>
        <source>%1 is %2; the student asks for %3.</source>
        <translation>%1 tiene %2; el estudiante pide %3.</translation>
    </message>
    <message>
        <source>If you accept it, the role stays: %1.</source>
        <translation>Si se acepta, el rol sigue igual: %1.</translation>
    </message>
    <message>
        <source>If you accept it, the role becomes: %1.</source>
        <translation>Si se acepta, el rol pasa a: %1.</translation>
    </message>
    <message>
        <source>No skill is Yes.</source>
        <translation>Ninguna habilidad tiene Sí.</translation>
    </message>
    <message>
        <source>Yes: %1.</source>
        <translation>Sí: %1.</translation>
    </message>
    <message>
        <source>Decided a moment ago: undo it to change your mind.</source>
        <translation>Decidida hace un momento: deshágalo para cambiar de idea.</translation>
    </message>
    <message>
        <source>The sheet is void; nothing more can be done with it.</source>
        <translation>La hoja está anulada; no se puede hacer nada más con ella.</translation>
    </message>
    <message>
        <source>You signed this sheet yourself. Nobody initials alone what they signed: another instructor initials it.</source>
        <translation>Esta hoja lleva su propia firma. Nadie pone solo las iniciales a lo que firmó: las pone otro docente.</translation>
    </message>
    <message>
        <source>Another student has a first scrub on this operation. Say why both count.</source>
        <translation>Otro estudiante tiene primera instrumentación en esta operación. Diga por qué cuentan las dos.</translation>
    </message>
    <message>
        <source>Initialing declines the mark review. Say why the mark stands.</source>
        <translation>Con las iniciales no se acepta la revisión de la marca. Diga por qué vale la marca.</translation>
    </message>
    <message>
        <source>This needs a reason; it stays beside the sheet for good.</source>
        <translation>Hace falta un motivo; queda al lado de la hoja para siempre.</translation>
    </message>
    <message>
        <source>There is no such sheet here.</source>
        <translation>Aquí no hay tal hoja.</translation>
    </message>
    <message>
        <source>Nobody has signed this sheet yet.</source>
        <translation>Nadie ha firmado esta hoja todavía.</translation>
    </message>
    <message>
        <source>Initialed: %1, %2</source>
        <translation>Con iniciales: %1, %2</translation>
    </message>
    <message>
        <source>Returned: %1, %2</source>
        <translation>Devuelta: %1, %2</translation>
    </message>
    <message>
        <source>Voided: %1, %2</source>
        <translation>Anulada: %1, %2</translation>
    </message>
    <message>
        <source>Mark review accepted: %1, %2</source>
        <translation>Revisión de marca aceptada: %1, %2</translation>
    </message>
    <message>
        <source>Re-filed: %1, %2</source>
        <translation>Archivada de nuevo: %1, %2</translation>
    </message>
    <message>
        <source>Changed: %1, %2</source>
        <translation>Cambiada: %1, %2</translation>
    </message>
    <message>
        <source>This looks like %1. No patient identifiers belong here, and what is written stays.</source>
        <translation>Esto parece %1. Aquí no van datos de pacientes, y lo escrito queda.</translation>
    </message>
    <message>
        <source>As it was imported: %1; %2; %3.</source>
        <translation>Como se importó: %1; %2; %3.</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::ClassBoard</name>
    <message>
        <source>By name</source>
        <translation>Por nombre</translation>
    </message>
    <message>
        <source>Most missing first</source>
        <translation>Primero a quien más falta</translation>
    </message>
    <message>
        <source>Most waiting first</source>
        <translation>Primero quien más espera</translation>
    </message>
    <message>
        <source>Longest without a sheet first</source>
        <translation>Primero quien lleva más sin hoja</translation>
    </message>
    <message numerus="yes">
        <source>%n mark review(s)</source>
        <translation>
            <numerusform>%n revisión de marca</numerusform>
            <numerusform>%n revisiones de marca</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n returned</source>
        <translation>
            <numerusform>%n devuelta</numerusform>
            <numerusform>%n devueltas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>no sheet for %n day(s)</source>
        <translation>
            <numerusform>sin hoja desde hace %n día</numerusform>
            <numerusform>sin hoja desde hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>no sheet yet</source>
        <translation>ninguna hoja todavía</translation>
    </message>
    <message>
        <source>All classes</source>
        <translation>Todas las clases</translation>
    </message>
    <message numerus="yes">
        <source>Counting: %1 of %n student(s)</source>
        <translation>
            <numerusform>Contando: %1 de %n estudiante</numerusform>
            <numerusform>Contando: %1 de %n estudiantes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n student(s)</source>
        <translation>
            <numerusform>%n estudiante</numerusform>
            <numerusform>%n estudiantes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with all cases recorded</source>
        <translation>
            <numerusform>%n con todos los casos anotados</numerusform>
            <numerusform>%n con todos los casos anotados</numerusform>
        </translation>
    </message>
    <message>
        <source>complete</source>
        <translation>cumplido</translation>
    </message>
    <message>
        <source>complete by exception</source>
        <translation>cumplido por excepción</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::RulesInForce</name>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: del %2 al %3</translation>
    </message>
    <message>
        <source>This term</source>
        <translation>Este período</translation>
    </message>
    <message>
        <source>No rules have come in yet: the usual ones are shown.</source>
        <translation>Todavía no han llegado reglas: se muestran las usuales.</translation>
    </message>
    <message>
        <source>%1 · counts</source>
        <translation>%1 · cuenta</translation>
    </message>
    <message>
        <source>%1 · counts once it is confirmed with the preceptor</source>
        <translation>%1 · cuenta cuando se confirma con el preceptor</translation>
    </message>
    <message>
        <source>%1 · does not count</source>
        <translation>%1 · no cuenta</translation>
    </message>
    <message numerus="yes">
        <source>%n case(s)</source>
        <translation>
            <numerusform>%n caso</numerusform>
            <numerusform>%n casos</numerusform>
        </translation>
    </message>
    <message>
        <source>at most %1 of one specialty</source>
        <translation>a lo sumo %1 de una especialidad</translation>
    </message>
    <message>
        <source>%1 specialties with %2 each</source>
        <translation>%1 especialidades con %2 cada una</translation>
    </message>
    <message>
        <source>At most %1 of %2 over all</source>
        <translation>A lo sumo %1 de %2 en total</translation>
    </message>
    <message>
        <source>director</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>instructor</source>
        <translation>docente</translation>
    </message>
    <message>
        <source>coordinator</source>
        <translation>coordinación</translation>
    </message>
    <message>
        <source>contact of a site</source>
        <translation>contacto de una sede</translation>
    </message>
    <message>
        <source>may not sign any more</source>
        <translation>ya no puede firmar</translation>
    </message>
    <message numerus="yes">
        <source>%n so far</source>
        <translation>
            <numerusform>%n hasta ahora</numerusform>
            <numerusform>%n hasta ahora</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n coming</source>
        <translation>
            <numerusform>%n próximo</numerusform>
            <numerusform>%n próximos</numerusform>
        </translation>
    </message>
    <message>
        <source>None: this set is in force for every class</source>
        <translation>Ninguno: estos requisitos están en vigor para todas las clases</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::StaffDesk</name>
    <message>
        <source>Instructor</source>
        <translation>Docente</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::StaffParcels</name>
    <message>
        <source>File %1 of %2</source>
        <translation>Archivo %1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>Stopped: %n file(s) were not looked at.</source>
        <translation>
            <numerusform>Detenido: queda %n archivo sin ver.</numerusform>
            <numerusform>Detenido: quedan %n archivos sin ver.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing new.</source>
        <translation>Nada nuevo.</translation>
    </message>
    <message numerus="yes">
        <source>%n new item(s) taken in.</source>
        <translation>
            <numerusform>Se recibió %n elemento nuevo.</numerusform>
            <numerusform>Se recibieron %n elementos nuevos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n receipt(s) signed.</source>
        <translation>
            <numerusform>%n acuse firmado.</numerusform>
            <numerusform>%n acuses firmados.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not used. %1</source>
        <translation>No se usó. %1</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n nuevo</numerusform>
            <numerusform>%n nuevos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n known</source>
        <translation>
            <numerusform>%n conocido</numerusform>
            <numerusform>%n conocidos</numerusform>
        </translation>
    </message>
    <message>
        <source>A part waits for something that came before it.</source>
        <translation>Una parte espera algo que va antes.</translation>
    </message>
    <message>
        <source>Refused, item %1 of %2: %3</source>
        <translation>Rechazado, elemento %1 de %2: %3</translation>
    </message>
    <message>
        <source>What came of the record of %1 differs from what was received before.</source>
        <translation>Lo que llegó del registro de %1 difiere de lo recibido antes.</translation>
    </message>
    <message>
        <source>What came of the record of %1 is older than what was received before, or its end was cut off.</source>
        <translation>Lo que llegó del registro de %1 es anterior a lo ya recibido, o le falta el final.</translation>
    </message>
    <message>
        <source>No receipt for %1: %2</source>
        <translation>Sin acuse para %1: %2</translation>
    </message>
    <message>
        <source>one record</source>
        <translation>un registro</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) from you that they do not have yet</source>
        <translation>
            <numerusform>%n elemento suyo que todavía no tiene</numerusform>
            <numerusform>%n elementos suyos que todavía no tiene</numerusform>
        </translation>
    </message>
    <message>
        <source>This is too large for one parcel: use the peelpack command.</source>
        <translation>Es demasiado grande para un paquete: use el comando peelpack.</translation>
    </message>
    <message>
        <source>Codes</source>
        <translation>Códigos</translation>
    </message>
    <message>
        <source>This parcel is too large for codes: save it as a file.</source>
        <translation>Este paquete es demasiado grande para códigos: guárdelo como archivo.</translation>
    </message>
    <message>
        <source>For the other instructors and the director</source>
        <translation>Para los demás docentes y la dirección</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation>Para %1</translation>
    </message>
</context>
<context>
    <name>peelpack::instructor::StudentOfClass</name>
    <message>
        <source>Recorded: %1 of %2</source>
        <translation>Anotados: %1 de %2</translation>
    </message>
    <message>
        <source>Signed: %1 of %2</source>
        <translation>Firmados: %1 de %2</translation>
    </message>
    <message>
        <source>Initialed: %1 of %2</source>
        <translation>Con iniciales: %1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n observation(s)</source>
        <translation>
            <numerusform>%n observación</numerusform>
            <numerusform>%n observaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) not fully marked</source>
        <translation>
            <numerusform>%n hoja sin todas las marcas</numerusform>
            <numerusform>%n hojas sin todas las marcas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n canceled case(s)</source>
        <translation>
            <numerusform>%n caso cancelado</numerusform>
            <numerusform>%n casos cancelados</numerusform>
        </translation>
    </message>
    <message>
        <source>Also recorded, not counted: %1.</source>
        <translation>También en el registro, pero sin contar: %1.</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 de %3</translation>
    </message>
</context>
<context>
    <name>peelpack::light::CodeReading</name>
    <message numerus="yes">
        <source>%1 of %n code(s)</source>
        <translation>
            <numerusform>%1 de %n código</numerusform>
            <numerusform>%1 de %n códigos</numerusform>
        </translation>
    </message>
    <message>
        <source>Hold the camera so that the whole code is in the picture. It may begin anywhere.</source>
        <translation>La cámara debe ver el código entero. Se puede empezar en cualquier código.</translation>
    </message>
    <message numerus="yes">
        <source>%n code(s) are missing, whichever: keep the camera on them.</source>
        <translation>
            <numerusform>Falta %n código, cualquiera: mantener la cámara en ellos.</numerusform>
            <numerusform>Faltan %n códigos, cualesquiera: mantener la cámara en ellos.</numerusform>
        </translation>
    </message>
    <message>
        <source>This is another sort of code, not one of a parcel.</source>
        <translation>Este es un código de otro tipo, no de un paquete.</translation>
    </message>
    <message>
        <source>These codes were made by a newer Peelpack; update this one, or ask for the file.</source>
        <translation>Estos códigos los hizo un Peelpack más nuevo; hay que actualizar este, o pedir el archivo.</translation>
    </message>
    <message>
        <source>A code did not go with those before it. The reading starts anew: keep the camera on the codes.</source>
        <translation>Un código no encajaba con los anteriores. La lectura empieza de nuevo: mantener la cámara en los códigos.</translation>
    </message>
</context>
<context>
    <name>peelpack::light::RunningCodes</name>
    <message>
        <source>Code %1 of %2</source>
        <translation>Código %1 de %2</translation>
    </message>
    <message>
        <source>Spare code %1</source>
        <translation>Código de reserva %1</translation>
    </message>
    <message numerus="yes">
        <source>Any %n code(s) are enough: one that is missed does not matter.</source>
        <translation>
            <numerusform>Basta %n código.</numerusform>
            <numerusform>Bastan %n códigos, cualesquiera: si se pierde uno, no importa.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 codes a second</source>
        <translation>%1 códigos por segundo</translation>
    </message>
</context>
<context>
    <name>peelpack::parts::QrScanner</name>
    <message>
        <source>This file is not a picture.</source>
        <translation>Este archivo no es una imagen.</translation>
    </message>
    <message>
        <source>There is no readable code in this picture: take it again, closer and straight.</source>
        <translation>No hay un código legible en esta imagen: hay que tomarla de nuevo, más de cerca y de frente.</translation>
    </message>
</context>
<context>
    <name>peelpack::preceptor::HandOver</name>
    <message>
        <source>What counts here: %1.</source>
        <translation>Lo que cuenta aquí: %1.</translation>
    </message>
    <message>
        <source>Only once an instructor has confirmed it with you: %1.</source>
        <translation>Solo cuando un docente lo haya confirmado con usted: %1.</translation>
    </message>
    <message>
        <source>This card belongs to another program.</source>
        <translation>Esta tarjeta es de otro programa.</translation>
    </message>
    <message>
        <source>Choose your name first.</source>
        <translation>Elija primero su nombre.</translation>
    </message>
    <message>
        <source>Whose card is it? Your name is missing.</source>
        <translation>¿De quién es la tarjeta? Falta su nombre.</translation>
    </message>
    <message>
        <source>Write your name first.</source>
        <translation>Escriba primero su nombre.</translation>
    </message>
    <message>
        <source>Draw your signature first.</source>
        <translation>Dibuje primero su firma.</translation>
    </message>
    <message>
        <source>Say why you do not sign; the student sees it.</source>
        <translation>Diga por qué no firma; el estudiante lo ve.</translation>
    </message>
    <message>
        <source>Your name is missing: this phone&apos;s list does not have this card.</source>
        <translation>Falta su nombre: esta tarjeta no está en la lista de este teléfono.</translation>
    </message>
    <message>
        <source>Does not count here: %1.</source>
        <translation>Aquí no cuenta: %1.</translation>
    </message>
    <message>
        <source>Does not count here, by your program&apos;s rules.</source>
        <translation>Aquí no cuenta, según las reglas del programa.</translation>
    </message>
    <message>
        <source>The strongest way, when an instructor knows your phone.</source>
        <translation>La forma más segura, si un docente conoce su teléfono.</translation>
    </message>
    <message>
        <source>It counts once an instructor vouches for it.</source>
        <translation>Cuenta cuando un docente la avale.</translation>
    </message>
    <message>
        <source>The weakest way: it counts only once an instructor has asked you about it.</source>
        <translation>La forma menos segura: solo cuenta cuando un docente le haya preguntado por ella.</translation>
    </message>
    <message>
        <source>By the program&apos;s list, %1 may sign every role.</source>
        <translation>Según la lista del programa, %1 puede firmar cada función.</translation>
    </message>
    <message>
        <source>%1 is not on the program&apos;s list of who may sign: nothing is refused, and instructors see a question.</source>
        <translation>%1 no está en la lista del programa de quién puede firmar: no se rechaza nada, y los docentes ven una pregunta.</translation>
    </message>
    <message>
        <source>By the program&apos;s list, %1 may sign: %2. For another role nothing is refused, and instructors see a question.</source>
        <translation>Según la lista del programa, %1 puede firmar: %2. En otra función no se rechaza nada, y los docentes ven una pregunta.</translation>
    </message>
    <message>
        <source>The program lists you as not active.</source>
        <translation>El programa ya no le tiene por activo.</translation>
    </message>
    <message>
        <source>The program has not oriented you yet.</source>
        <translation>El programa todavía no le ha dado la orientación.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Who may sign which role, by the program&apos;s list: %1.</source>
        <translation>Quién puede firmar qué función, según la lista del programa: %1.</translation>
    </message>
</context>
<context>
    <name>peelpack::preceptor::OwnSheet</name>
    <message>
        <source>You signed this sheet on %1. Signing it again adds to it: mark only what you did not mark then.</source>
        <translation>Firmó esta hoja el %1. Firmarla otra vez la completa: marque solo lo que no marcó entonces.</translation>
    </message>
</context>
<context>
    <name>peelpack::preceptor::SigningPhone</name>
    <message>
        <source>Signed %1: canceled before incision</source>
        <translation>Firmada el %1: cancelada antes de la incisión</translation>
    </message>
    <message>
        <source>Signed %1, %2</source>
        <translation>Firmada el %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n skill(s) marked</source>
        <translation>
            <numerusform>%n habilidad marcada</numerusform>
            <numerusform>%n habilidades marcadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Write your name as it stands under what you sign.</source>
        <translation>Escriba su nombre como aparece bajo lo que firma.</translation>
    </message>
</context>
<context>
    <name>peelpack::preceptor::Sitting</name>
    <message>
        <source>against the preference card</source>
        <translation>según la tarjeta de preferencias</translation>
    </message>
    <message>
        <source>with the circulator</source>
        <translation>con circulante</translation>
    </message>
    <message>
        <source>a break that was seen and mended is Yes</source>
        <translation>una ruptura vista y corregida es Sí</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>marked already: %1</source>
        <translation>ya marcada: %1</translation>
    </message>
    <message>
        <source>Mark what you saw.</source>
        <translation>Marque lo que vio.</translation>
    </message>
    <message>
        <source>Say why &quot;%1&quot; is N/A.</source>
        <translation>Diga por qué “%1” es N/A.</translation>
    </message>
    <message>
        <source>This looks like %1. No patient names, numbers, ages or birth dates belong here.</source>
        <translation>Esto parece %1. Aquí no van nombres, números, edades ni fechas de nacimiento de pacientes.</translation>
    </message>
    <message>
        <source>%1: %2 for %3</source>
        <translation>%1: %2, para %3</translation>
    </message>
    <message>
        <source>The case was canceled before incision.</source>
        <translation>El caso se canceló antes de la incisión.</translation>
    </message>
    <message>
        <source>Yes: %1</source>
        <translation>Sí: %1</translation>
    </message>
    <message>
        <source>No: %1</source>
        <translation>No: %1</translation>
    </message>
    <message>
        <source>N/A: %1</source>
        <translation>N/A: %1</translation>
    </message>
    <message>
        <source>You did not see: %1</source>
        <translation>No vio: %1</translation>
    </message>
    <message>
        <source>Feedback: %1</source>
        <translation>Comentarios: %1</translation>
    </message>
</context>
<context>
    <name>peelpack::program::CardMaking</name>
    <message>
        <source>Write the name of the preceptor.</source>
        <translation>Escriba el nombre del preceptor.</translation>
    </message>
    <message>
        <source>The two PINs differ.</source>
        <translation>Los dos PIN no coinciden.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::ClassInviting</name>
    <message>
        <source>Line %1: %2</source>
        <translation>Línea %1: %2</translation>
    </message>
</context>
<context>
    <name>peelpack::program::ClinicalDayLists</name>
    <message>
        <source>No day from a year ago to two years ahead is in this file. Choose another one.</source>
        <translation>En este archivo no hay días desde hace un año hasta dentro de dos. Elija otro.</translation>
    </message>
    <message>
        <source>Signed. The days reach the students with your next parcels.</source>
        <translation>Firmado. Los días llegan a los estudiantes con sus próximos paquetes.</translation>
    </message>
    <message>
        <source>Signed: this list has no clinical days any more.</source>
        <translation>Firmado: esta lista ya no tiene días clínicos.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::Granting</name>
    <message>
        <source>This is not the text of an answer. Copy all of it.</source>
        <translation>Este no es el texto de una respuesta. Cópielo entero.</translation>
    </message>
    <message>
        <source>%1 is in. Send them a parcel next: then their phone knows it, too.</source>
        <translation>%1 ya está en el programa. Envíele ahora un paquete: así también lo sabe su teléfono.</translation>
    </message>
    <message>
        <source>Nothing was granted: somebody else may have answered. Invite %1 again; the old invitation is good for nothing then.</source>
        <translation>No se dio entrada a nadie: puede que haya respondido otra persona. Invite otra vez a %1; la invitación anterior deja de servir.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::Inviting</name>
    <message>
        <source>for another device</source>
        <translation>para otro equipo</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta el %1</translation>
    </message>
</context>
<context>
    <name>peelpack::program::OwnProcedures</name>
    <message>
        <source>added</source>
        <translation>añadido</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>was called %1</source>
        <translation>se llamaba %1</translation>
    </message>
    <message>
        <source>was filed under %1</source>
        <translation>se archivaba en %1</translation>
    </message>
    <message>
        <source>This table says nothing that the catalogue does not say already. Choose another one.</source>
        <translation>Esta tabla no dice nada que el catálogo no diga ya. Elija otra.</translation>
    </message>
    <message>
        <source>Signed. The procedures reach the students with your next parcels.</source>
        <translation>Firmado. Los procedimientos llegan a los estudiantes con sus próximos paquetes.</translation>
    </message>
    <message>
        <source>Signed: the catalogue is in force as it is shipped.</source>
        <translation>Firmado: el catálogo rige tal como viene.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::PaperToCut</name>
    <message>
        <source>No invitation is open.</source>
        <translation>No hay ninguna invitación abierta.</translation>
    </message>
    <message>
        <source>From 1 to %1 stubs, numbered from 1 or later.</source>
        <translation>De 1 a %1 talones, numerados desde 1 o más.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::People</name>
    <message>
        <source>director</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>instructor</source>
        <translation>docente</translation>
    </message>
    <message>
        <source>coordinator</source>
        <translation>coordinación</translation>
    </message>
    <message>
        <source>contact of a site</source>
        <translation>contacto de una sede</translation>
    </message>
    <message>
        <source>student</source>
        <translation>estudiante</translation>
    </message>
    <message>
        <source>%1, you</source>
        <translation>%1, usted</translation>
    </message>
    <message numerus="yes">
        <source>%n device(s)</source>
        <translation>
            <numerusform>%n equipo</numerusform>
            <numerusform>%n equipos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n ended</source>
        <translation>
            <numerusform>%n con fin</numerusform>
            <numerusform>%n con fin</numerusform>
        </translation>
    </message>
    <message>
        <source>Device %1</source>
        <translation>Equipo %1</translation>
    </message>
    <message>
        <source>ended; what was received before stays good</source>
        <translation>con fin; lo recibido antes sigue valiendo</translation>
    </message>
    <message numerus="yes">
        <source>in use · %n entry(s) received</source>
        <translation>
            <numerusform>en uso · %n anotación recibida</numerusform>
            <numerusform>en uso · %n anotaciones recibidas</numerusform>
        </translation>
    </message>
    <message>
        <source>in use · nothing received yet</source>
        <translation>en uso · nada recibido todavía</translation>
    </message>
</context>
<context>
    <name>peelpack::program::Preceptors</name>
    <message>
        <source>Own phone</source>
        <translation>Teléfono propio</translation>
    </message>
    <message>
        <source>Signing card no. %1</source>
        <translation>Tarjeta de firma n.º %1</translation>
    </message>
    <message>
        <source>may not sign any more</source>
        <translation>ya no puede firmar</translation>
    </message>
    <message>
        <source>ended; signs nothing that counts any more</source>
        <translation>con fin; ya no firma nada que cuente</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en uso</translation>
    </message>
    <message>
        <source>Oriented on %1</source>
        <translation>Orientación: %1</translation>
    </message>
    <message>
        <source>Not oriented yet</source>
        <translation>Todavía sin orientación</translation>
    </message>
    <message>
        <source>active</source>
        <translation>activo</translation>
    </message>
    <message>
        <source>not active any more</source>
        <translation>ya no está activo</translation>
    </message>
    <message>
        <source>The program has said nothing about orientation yet.</source>
        <translation>El programa todavía no ha dicho nada de la orientación.</translation>
    </message>
    <message>
        <source>Say the day as year, month, day: 2027-01-11. Leave it empty when there was none yet.</source>
        <translation>Diga el día como año, mes, día: 2027-01-11. Déjelo vacío si todavía no hubo.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::ProgramRules</name>
    <message>
        <source>A term without a name</source>
        <translation>Un periodo sin nombre</translation>
    </message>
    <message>
        <source>%1, %2 to %3. Requirements: %4. What counts: %5.</source>
        <translation>%1, del %2 al %3. Requisitos: %4. Lo que cuenta: %5.</translation>
    </message>
    <message>
        <source>Signed: these rules are in force from now on. They reach the others with your next parcels.</source>
        <translation>Firmado: estas reglas están en vigor desde ahora. Llegan a los demás con sus próximos paquetes.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::RequirementChanges</name>
    <message>
        <source>Choose the class, or every class.</source>
        <translation>Elija la clase o todas las clases.</translation>
    </message>
    <message>
        <source>Say the first day as year, month, day: 2027-01-11.</source>
        <translation>Diga el primer día como año, mes, día: 2027-01-11.</translation>
    </message>
    <message>
        <source>Choose the requirement set.</source>
        <translation>Elija los requisitos.</translation>
    </message>
    <message>
        <source>Say why; everybody in the program sees it.</source>
        <translation>Diga por qué; lo ven todos en el programa.</translation>
    </message>
    <message>
        <source>Signed. It reaches the others with your next parcels.</source>
        <translation>Firmado. Llega a los demás con sus próximos paquetes.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::RulesDraft</name>
    <message>
        <source>Never before an instructor has confirmed it with the preceptor</source>
        <translation>Nunca antes de que un docente lo haya confirmado con el preceptor</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: del %2 al %3</translation>
    </message>
    <message>
        <source>The term</source>
        <translation>El periodo</translation>
    </message>
    <message>
        <source>Choose the requirement set that is in force.</source>
        <translation>Elija los requisitos que están en vigor.</translation>
    </message>
    <message>
        <source>The set in force is not one of those shipped with the app: choose one of them, or use the peelpack command with the set&apos;s file.</source>
        <translation>Los requisitos en vigor no son de los que trae la aplicación: elija unos de ellos o use el comando peelpack con su archivo.</translation>
    </message>
    <message>
        <source>At least one way of signing has to count.</source>
        <translation>Debe contar al menos una forma de firmar.</translation>
    </message>
    <message>
        <source>Say the first and the last day of the term as year, month, day: 2027-01-11.</source>
        <translation>Indique el primer y el último día del periodo como año, mes, día: 2027-01-11.</translation>
    </message>
    <message>
        <source>The term ends before it begins: look at the two days again.</source>
        <translation>El periodo termina antes de empezar: revise los dos días.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::SignerList</name>
    <message>
        <source>Which credential? It is missing.</source>
        <translation>¿Qué credencial? Falta.</translation>
    </message>
    <message>
        <source>Turn on at least one role that it may sign.</source>
        <translation>Encienda al menos una función que pueda firmar.</translation>
    </message>
    <message>
        <source>This credential is on the list: change that one.</source>
        <translation>Esta credencial está en la lista: cambie esa.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::SiteList</name>
    <message>
        <source>What is the site called? Its name is missing.</source>
        <translation>¿Cómo se llama la sede? Falta su nombre.</translation>
    </message>
    <message>
        <source>A site of this name is on the list: change that one.</source>
        <translation>Hay una sede con este nombre en la lista: cambie esa.</translation>
    </message>
</context>
<context>
    <name>peelpack::program::Vouching</name>
    <message>
        <source>own phone</source>
        <translation>teléfono propio</translation>
    </message>
    <message>
        <source>signing card made on the spot</source>
        <translation>tarjeta de firma hecha en el momento</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) wait for it</source>
        <translation>
            <numerusform>%n hoja lo espera</numerusform>
            <numerusform>%n hojas lo esperan</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>A student</source>
        <translation>Un estudiante</translation>
    </message>
    <message>
        <source>This is not a signing key. On the preceptor&apos;s phone: Your signing key.</source>
        <translation>Esto no es una clave de firma. En el teléfono del preceptor: Su clave de firma.</translation>
    </message>
    <message>
        <source>Write the name of the preceptor.</source>
        <translation>Escriba el nombre del preceptor.</translation>
    </message>
</context>
<context>
    <name>peelpack::share::DialogShare</name>
    <message>
        <source>%1 is there already. Choose another folder, or move it away.</source>
        <translation>%1 ya está ahí. Elija otra carpeta, o quítelo de ahí.</translation>
    </message>
</context>
<context>
    <name>peelpack::share::Share</name>
    <message>
        <source>Cannot read this file.</source>
        <translation>No se puede leer este archivo.</translation>
    </message>
    <message>
        <source>This file is too large to be one of Peelpack&apos;s.</source>
        <translation>Este archivo es demasiado grande para ser de Peelpack.</translation>
    </message>
    <message>
        <source>Cannot write there: check the space that is left, or choose another place.</source>
        <translation>No se puede escribir ahí: hay que revisar el espacio que queda o elegir otro lugar.</translation>
    </message>
</context>
<context>
    <name>peelpack::shell::FirstStart</name>
    <message>
        <source>The two PINs differ.</source>
        <translation>Los dos PIN no coinciden.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>Las dos frases de contraseña no coinciden.</translation>
    </message>
</context>
<context>
    <name>peelpack::shell::Joining</name>
    <message>
        <source>This invitation has expired: ask for a new one.</source>
        <translation>Esta invitación venció: pide una nueva.</translation>
    </message>
    <message>
        <source>This is not the text of an invitation. Copy all of it.</source>
        <translation>Este no es el texto de una invitación. Cópialo entero.</translation>
    </message>
    <message>
        <source>Write your name as your instructor knows it.</source>
        <translation>Escribe tu nombre como lo conoce tu docente.</translation>
    </message>
</context>
<context>
    <name>peelpack::shell::Phone</name>
    <message>
        <source>PIN %1</source>
        <translation>PIN %1</translation>
    </message>
    <message>
        <source>The phone was with a preceptor when the app ended. What was marked and not signed is gone.</source>
        <translation>La app se cerró mientras un preceptor tenía el teléfono. Se perdió lo que estaba marcado y sin firmar.</translation>
    </message>
    <message>
        <source>That is not the demo&apos;s PIN: it is %1.</source>
        <translation>Ese no es el PIN de la demo: es %1.</translation>
    </message>
    <message>
        <source>The phone is locked.</source>
        <translation>El teléfono está bloqueado.</translation>
    </message>
    <message>
        <source>The demo&apos;s PIN stays as it is.</source>
        <translation>El PIN de la demo no cambia.</translation>
    </message>
    <message>
        <source>The two new PINs or passphrases differ.</source>
        <translation>El PIN o la frase de contraseña no es igual en los dos campos.</translation>
    </message>
    <message>
        <source>Changed. From now on the new one opens this phone.</source>
        <translation>Cambio hecho. Desde ahora, lo nuevo abre este teléfono.</translation>
    </message>
    <message>
        <source>The demo has no vault code.</source>
        <translation>La demo no tiene código de la bóveda.</translation>
    </message>
    <message>
        <source>That the hand-over ended could not be recorded, and it goes on: %1</source>
        <translation>No se pudo registrar el fin de la entrega, y sigue abierta: %1</translation>
    </message>
    <message numerus="yes">
        <source>The hand-over ended after %n minute(s) without a touch. What was marked and not signed is gone.</source>
        <translation>
            <numerusform>La entrega terminó tras %n minuto sin tocar el teléfono. Lo marcado sin firmar se perdió.</numerusform>
            <numerusform>La entrega terminó tras %n minutos sin tocar el teléfono. Lo marcado sin firmar se perdió.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::shell::SettingUp</name>
    <message>
        <source>Write your name as the program knows it.</source>
        <translation>Escriba su nombre como lo conoce el programa.</translation>
    </message>
</context>
<context>
    <name>peelpack::shell::StartingToSign</name>
    <message>
        <source>Write your name as it stands under what you sign.</source>
        <translation>Escriba su nombre como aparece bajo lo que firma.</translation>
    </message>
</context>
<context>
    <name>peelpack::shell::TakingOver</name>
    <message>
        <source>Write your name as the program knows it.</source>
        <translation>Escriba su nombre como lo conoce el programa.</translation>
    </message>
    <message>
        <source>Which director of this program are you? The second is 2, the third 3.</source>
        <translation>¿Qué dirección de este programa es usted? La segunda es 2, la tercera 3.</translation>
    </message>
</context>
<context>
    <name>peelpack::student::Desk</name>
    <message>
        <source>Student</source>
        <translation>Estudiante</translation>
    </message>
</context>
<context>
    <name>peelpack::student::NewSheet</name>
    <message>
        <source>Today, %1</source>
        <translation>Hoy, %1</translation>
    </message>
    <message>
        <source>You have a sheet of this day for &quot;%1&quot; already. Is this another case?</source>
        <translation>Ya tienes una hoja de este día para “%1”. ¿Es otro caso?</translation>
    </message>
    <message>
        <source>&quot;%1&quot; looks like %2. No patient names, numbers, ages or birth dates belong on a sheet.</source>
        <translation>“%1” parece %2. En una hoja no van nombres, números, edades ni fechas de nacimiento de pacientes.</translation>
    </message>
</context>
<context>
    <name>peelpack::student::Parcels</name>
    <message numerus="yes">
        <source>%n change(s) are only on this phone, and would be lost with it. Send them to your instructor.</source>
        <translation>
            <numerusform>%n cambio está solo en este teléfono y se pierde con él mientras tu docente no lo tenga.</numerusform>
            <numerusform>%n cambios están solo en este teléfono y se pierden con él mientras tu docente no los tenga.</numerusform>
        </translation>
    </message>
    <message>
        <source>With your instructor up to %1.</source>
        <translation>Tu docente lo tiene todo hasta el %1.</translation>
    </message>
    <message>
        <source>Your record is too large for one parcel.</source>
        <translation>Tu registro es demasiado grande para un paquete.</translation>
    </message>
    <message>
        <source>Cannot use %1: %2</source>
        <translation>No se puede usar %1: %2</translation>
    </message>
    <message>
        <source>The file is kept: something that came before it is missing. It is tried again with the next file.</source>
        <translation>Guardado aparte: falta algo que va antes. Se intenta de nuevo con el próximo archivo.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) cannot be used.</source>
        <translation>
            <numerusform>%n entrada no se puede usar.</numerusform>
            <numerusform>%n entradas no se pueden usar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new item(s) taken in.</source>
        <translation>
            <numerusform>%n novedad recibida.</numerusform>
            <numerusform>%n novedades recibidas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing new: you have it already.</source>
        <translation>Nada nuevo: ya lo tienes.</translation>
    </message>
    <message>
        <source>Two versions of this phone&apos;s record exist, often after a restore. This phone signs nothing more: ask your instructor for a new invitation and join again. What you have stays.</source>
        <translation>El registro de este teléfono se dividió; suele pasar tras restaurar una copia. Con sus claves ya no se firma nada: pide a tu docente una invitación nueva y únete otra vez. Lo que tienes se conserva.</translation>
    </message>
    <message>
        <source>the codes</source>
        <translation>los códigos</translation>
    </message>
    <message>
        <source>Your record is too large for codes by now: send it as a file.</source>
        <translation>Tu registro ya es demasiado grande para códigos: envíalo como archivo.</translation>
    </message>
</context>
<context>
    <name>peelpack::student::SheetList</name>
    <message>
        <source>Any state</source>
        <translation>Todo estado</translation>
    </message>
    <message>
        <source>Any role</source>
        <translation>Todo rol</translation>
    </message>
    <message>
        <source>Any specialty</source>
        <translation>Toda especialidad</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n hoja</numerusform>
            <numerusform>%n hojas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n sheet(s)</source>
        <translation>
            <numerusform>%1 de %n hoja</numerusform>
            <numerusform>%1 de %n hojas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>peelpack::student::SheetPage</name>
    <message>
        <source>after it was initialed: without effect</source>
        <translation>después de las iniciales: sin efecto</translation>
    </message>
    <message>
        <source>signed another procedure, date, site or room</source>
        <translation>firmó otros procedimientos u otro encabezado</translation>
    </message>
    <message>
        <source>As it was signed: %1; %2.</source>
        <translation>Como se firmó: %1; %2.</translation>
    </message>
    <message>
        <source>You asked for a review: %1</source>
        <translation>Pediste una revisión: %1</translation>
    </message>
    <message>
        <source>Your review was accepted: %1</source>
        <translation>Tu revisión se aceptó: %1</translation>
    </message>
    <message>
        <source>Your review was declined: %1</source>
        <translation>Tu revisión no se aceptó: %1</translation>
    </message>
    <message>
        <source>Two preceptors differ; No stands until your instructor rules.</source>
        <translation>Dos preceptores difieren; vale No hasta que decida tu docente.</translation>
    </message>
    <message>
        <source>Helps most</source>
        <translation>Ayuda más</translation>
    </message>
    <message>
        <source>Say why the mark should be Yes; your instructor reads it.</source>
        <translation>Di por qué la marca debe ser Sí; tu docente lo lee.</translation>
    </message>
    <message>
        <source>Counted so far, second scrub: %1</source>
        <translation>Contados hasta ahora, segunda instrumentación: %1</translation>
    </message>
    <message>
        <source>Counted so far, first scrub: %1</source>
        <translation>Contados hasta ahora, primera instrumentación: %1</translation>
    </message>
    <message>
        <source>A C-section is obstetrics and gynecology.</source>
        <translation>Una cesárea es de ginecología y obstetricia.</translation>
    </message>
    <message>
        <source>Filed under %1. Counts toward: %2.</source>
        <translation>Clasificada en %1. Suma para: %2.</translation>
    </message>
    <message>
        <source>Say why you withdraw the sheet; it stays visible with your reason.</source>
        <translation>Di por qué retiras la hoja; sigue visible con tu motivo.</translation>
    </message>
    <message>
        <source>As it was imported: %1.</source>
        <translation>Como se importó: %1.</translation>
    </message>
</context>
<context>
    <name>peelpack::student::TallyPage</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n observation(s)</source>
        <translation>
            <numerusform>%n observación</numerusform>
            <numerusform>%n observaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) not fully marked</source>
        <translation>
            <numerusform>%n hoja con marcas incompletas</numerusform>
            <numerusform>%n hojas con marcas incompletas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n canceled case(s)</source>
        <translation>
            <numerusform>%n caso cancelado</numerusform>
            <numerusform>%n casos cancelados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) without a specialty</source>
        <translation>
            <numerusform>%n hoja sin especialidad</numerusform>
            <numerusform>%n hojas sin especialidad</numerusform>
        </translation>
    </message>
    <message>
        <source>Also recorded, not counted: %1.</source>
        <translation>También en el registro, pero sin contar: %1.</translation>
    </message>
</context>
<context>
    <name>peelpack::student::Today</name>
    <message>
        <source>%1 of %2 cases counted</source>
        <translation>%1 de %2 casos contados</translation>
    </message>
    <message>
        <source>What you did since your last parcel is only on this phone. Send it to your instructor.</source>
        <translation>Lo que hiciste desde tu último paquete está solo en este teléfono. Envíalo a tu docente.</translation>
    </message>
    <message numerus="yes">
        <source>%n more sheet(s) wait</source>
        <translation>
            <numerusform>Espera %n hoja más</numerusform>
            <numerusform>Esperan %n hojas más</numerusform>
        </translation>
    </message>
    <message>
        <source>Clinical day: %1</source>
        <translation>Día clínico: %1</translation>
    </message>
</context>
</TS>
