<#-- What is handed on beside the program. dependencyMap: each library with its licences. -->
The libraries that Evenhand hands on
====================================

Evenhand itself is under the Apache License 2.0 (LICENSE). Each library is handed on as its makers published it, in a jar of its
own; the licence and notice files that stand in a jar are copied to the folder of its name beside this file.

JFreeChart is under the GNU Lesser General Public License, version 2.1 or later; its text is LGPL-2.1.txt, and the complete source
of the very version that is handed on stands beside it (jfreechart-*-sources.jar). Evenhand uses the library unchanged. Whoever
changes it may put the changed jar in the place of this one, under the same name, and may take Evenhand apart to find out why that
does not work. Without the class archives (*.jsa) Evenhand starts with whatever jars it finds.

MigLayout's conditions stand in MigLayout-BSD.txt. The letters of the window and of the report are Roboto, under the Apache License.

<#list dependencyMap as entry>
<#assign library = entry.getKey()/>
<#if library.groupId != "evenhand">
${library.groupId}:${library.artifactId}:${library.version}
    ${library.name!library.artifactId}<#if library.url??>, ${library.url}</#if>
    licence: <#list entry.getValue() as licence>${licence}<#sep>; </#list>
</#if>
</#list>
